package yett.command.diagnose.correction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.site.SiteEntry;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.RuleBase;

/** Changes what was reported before any check: details of the gate, complaints, recent events. */
record ReportCorrections(Sitting sitting) {
  /** Marks what is chosen now. */
  private static final String NOW = " (chosen now)";

  /** Everything that was said before any check and can be changed. */
  List<Corrections.Said> all() {
    CaseState.Told told = sitting.moment().state().told();
    RuleBase base = sitting.base();
    List<Corrections.Said> intake = new ArrayList<>();
    if (told.siteTaken()) {
      intake.add(
          new Corrections.Said(
              "site", "The gate as installed", () -> new SiteEntry(sitting).correct()));
    }
    told.complaints()
        .ifPresent(
            said ->
                intake.add(
                    list(
                        "complaints",
                        "What is wrong with the gate?",
                        base.complaints().stream().collect(named(Check::id, Check::ask)),
                        said,
                        1,
                        Event.Complained::new)));
    told.histories()
        .ifPresent(
            said ->
                intake.add(
                    list(
                        "history",
                        "What happened lately?",
                        base.histories().values().stream()
                            .collect(named(History::id, History::name)),
                        said,
                        0,
                        Event.Happened::new)));
    return intake;
  }

  private static <T> Collector<T, ?, Map<String, String>> named(
      Function<T, String> id, Function<T, String> name) {
    return Collectors.toMap(id, name, (a, b) -> a, LinkedHashMap::new);
  }

  private Corrections.Said list(
      String id,
      String question,
      Map<String, String> names,
      List<String> said,
      int least,
      Function<List<String>, Event> event) {
    String now = said.stream().map(s -> names.getOrDefault(s, s)).collect(Collectors.joining("; "));
    String text = question + " (" + (now.isEmpty() ? "nothing" : now) + ")";
    return new Corrections.Said(id, text, () -> pick(question, names, said, least, event));
  }

  private void pick(
      String question,
      Map<String, String> names,
      List<String> said,
      int least,
      Function<List<String>, Event> event) {
    List<String> ids = List.copyOf(names.keySet());
    List<String> texts = List.copyOf(names.values());
    List<String> shown =
        names.entrySet().stream()
            .map(e -> e.getValue() + (said.contains(e.getKey()) ? NOW : ""))
            .toList();
    LongList list =
        LongList.of(sitting, question, "Pick all that apply, also those that are to stay.", shown);
    list.show();
    sitting
        .until(
            () ->
                list.prompt("Numbers" + (least == 0 ? ", 0 for none" : ""))
                    + ", or Enter to leave it as it was",
            line -> list.turns(line) ? Prompt.Reading.again("") : picked(line, ids, texts, least))
        .ifPresent(
            picked -> {
              Moment before = sitting.moment();
              sitting.record(event.apply(picked));
              sitting.show(sitting.movements().news(before, sitting.moment()));
            });
  }

  private static Prompt.Reading<Optional<List<String>>> picked(
      String line, List<String> ids, List<String> texts, int least) {
    if (line.isEmpty() || Words.isBack(line)) {
      return Prompt.Reading.of(Optional.empty());
    }
    ListChoice.Several picked = ListChoice.several(NoneWords.isSaid(line) ? "" : line, ids, texts);
    if (picked.unclear().isPresent()) {
      return Prompt.Reading.again(
          Words.quoted(picked.unclear().get())
              + " is not understood: type numbers from 1 to "
              + ids.size()
              + " separated by spaces.");
    }
    return picked.positions().size() < least
        ? Prompt.Reading.again("At least one, or Enter to leave it as it was.")
        : Prompt.Reading.of(Optional.of(picked.positions().stream().map(ids::get).toList()));
  }
}
