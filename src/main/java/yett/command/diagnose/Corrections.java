package yett.command.diagnose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import yett.command.common.ListChoice;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Text;
import yett.interview.Answer;
import yett.interview.CaseState;
import yett.interview.Event;
import yett.interview.Moment;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** Changes earlier answers; each counts where it stood. */
public final class Corrections {
  private final Sitting sitting;

  public Corrections(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Something that was said and can be said anew. */
  private record Said(String id, String text, Runnable again) {}

  /** Lets the person pick an answer and give it again. */
  public void choose() {
    List<Said> said = new ArrayList<>();
    sitting.moment().state().answers().stream()
        .filter(a -> sitting.base().checks().containsKey(a.check()))
        .map(a -> new Said(a.check(), told(a), () -> again(a)))
        .forEach(said::add);
    said.addAll(intake());
    if (said.isEmpty()) {
      sitting.say("There is no answer to correct yet; back takes a step back.");
      return;
    }
    List<String> texts = said.stream().map(Said::text).toList();
    sitting.show(Block.heading("Which answer?"), Block.numbered(texts));
    List<String> ids = said.stream().map(Said::id).toList();
    sitting
        .until(
            "Number, or Enter for none",
            line -> {
              List<Integer> found = ListChoice.pick(line, ids, texts);
              return line.isEmpty() || found.size() == 1
                  ? Prompt.Reading.of(found.stream().findFirst().map(said::get))
                  : Prompt.Reading.again("Type a number from 1 to " + said.size() + ".");
            })
        .ifPresent(s -> s.again().run());
  }

  /** What was said before any check. */
  private List<Said> intake() {
    CaseState.Told told = sitting.moment().state().told();
    RuleBase base = sitting.base();
    List<Said> intake = new ArrayList<>();
    if (told.siteTaken()) {
      intake.add(
          new Said(
              "site",
              "The gate as installed",
              () -> new SiteForm(sitting, new Wishes(sitting), Map.of()).correct()));
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

  private Said list(
      String id,
      String question,
      Map<String, String> names,
      List<String> said,
      int least,
      Function<List<String>, Event> event) {
    String now = said.stream().map(s -> names.getOrDefault(s, s)).collect(Collectors.joining("; "));
    String text = question + " (" + (now.isEmpty() ? "nothing" : now) + ")";
    return new Said(id, text, () -> pick(question, names, least, event));
  }

  private void pick(
      String question, Map<String, String> names, int least, Function<List<String>, Event> event) {
    List<String> ids = List.copyOf(names.keySet());
    List<String> texts = List.copyOf(names.values());
    sitting.show(sitting.views().picking(question, "Pick all that apply.", texts));
    sitting
        .until(
            "Numbers" + (least == 0 ? ", 0 for none" : "") + ", or Enter to leave it as it was",
            line -> picked(line, ids, texts, least))
        .ifPresent(
            picked -> {
              Moment before = sitting.moment();
              sitting.record(event.apply(picked));
              sitting.show(sitting.movements().news(before, sitting.moment()));
            });
  }

  private static Prompt.Reading<Optional<List<String>>> picked(
      String line, List<String> ids, List<String> texts, int least) {
    if (line.isEmpty()) {
      return Prompt.Reading.of(Optional.empty());
    }
    List<String> picked = new ArrayList<>();
    String[] parts = line.equals("0") ? new String[0] : ListChoice.parts(line);
    for (String part : parts) {
      List<Integer> found = ListChoice.pick(part, ids, texts);
      if (found.size() != 1) {
        return Prompt.Reading.again(
            "\""
                + Words.shortened(part)
                + "\" is not clear: type numbers from 1 to "
                + ids.size()
                + " with blanks between.");
      }
      picked.add(ids.get(found.get(0)));
    }
    return picked.size() < least
        ? Prompt.Reading.again("At least one, or Enter to leave it as it was.")
        : Prompt.Reading.of(Optional.of(picked.stream().distinct().toList()));
  }

  /** A question with the answer that was given to it. */
  public String told(CaseState.Answered answered) {
    return sitting.base().checks().get(answered.check()).ask() + " " + shown(answered);
  }

  private String shown(CaseState.Answered answered) {
    Check check = sitting.base().checks().get(answered.check());
    String shown =
        answered
            .answer()
            .map(
                chosen -> Wording.meaning(check, chosen.outcome()),
                Answer.Read::typed,
                () -> "cannot tell",
                () -> "not now");
    return "(" + shown + ")";
  }

  /** Asks a question that was answered before, for another answer. */
  public void again(CaseState.Answered answered) {
    Check check = sitting.base().checks().get(answered.check());
    sitting.show(Block.paragraph(Text.strong(check.ask())));
    if (!check.measured()) {
      sitting.show(Block.numbered(check.outcomes().stream().map(Check.Outcome::text).toList()));
    }
    sitting
        .until(
            Sitting.prompt(check) + ", or Enter to leave it as it was", line -> read(check, line))
        .ifPresent(
            answer -> {
              Moment before = sitting.moment();
              sitting.record(new Event.Corrected(answered.event(), answer));
              sitting.show(sitting.movements().taken(before, sitting.moment(), check));
            });
  }

  /** Empty to leave it as it was. */
  private static Prompt.Reading<Optional<Answer>> read(Check check, String line) {
    if (line.isEmpty()) {
      return Prompt.Reading.of(Optional.empty());
    }
    boolean unknown = Words.wish(line).filter(w -> w == Words.Wish.UNKNOWN).isPresent();
    Words.Heard heard =
        unknown ? Words.Heard.of(new Answer.CannotTell()) : Words.answer(check, line);
    return heard.answer().isPresent()
        ? Prompt.Reading.of(heard.answer())
        : Prompt.Reading.again(heard.complaint());
  }
}
