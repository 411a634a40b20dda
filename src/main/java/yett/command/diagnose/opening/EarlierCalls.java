package yett.command.diagnose.opening;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import yett.casebook.CaseId;
import yett.casebook.CaseSearch;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.console.Block;
import yett.console.Console;
import yett.desk.OpenCase;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.wording.CallWords;

/**
 * Finds from earlier calls which gate a new call is about, and which of its cases is still open.
 */
record EarlierCalls(Casebook casebook, Console console) {
  private static final Set<String> YES = Set.of("y", "yes", "right");

  /** How many gates are offered, so that they can be seen at a glance. */
  static final int MOST = 9;

  /** The gates of cases that know this caller, number or place, the newest first. */
  List<String> gates(String typed) {
    String sought = typed.strip().toLowerCase(Locale.ROOT);
    if (sought.length() < 3) {
      return List.of();
    }
    var text =
        new CaseSearch(
            Optional.empty(),
            java.util.Set.of(),
            Optional.of(sought),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return Stream.concat(
            casebook.knowing(typed).stream().map(casebook::summary),
            casebook.search(text).stream().filter(line -> isAt(line.id(), sought)))
        .map(CaseSummary::siteId)
        .distinct()
        .limit(MOST)
        .toList();
  }

  private boolean isAt(CaseId id, String sought) {
    return log(id).where().filter(w -> w.toLowerCase(Locale.ROOT).contains(sought)).isPresent();
  }

  private CallLog log(CaseId id) {
    return CallLog.of(OpenCase.entries(casebook.events(id)));
  }

  /**
   * Asks which of these gates it is. The inner value is empty if it is none of them, the outer one
   * if the person leaves.
   */
  Optional<Optional<String>> pick(List<String> gates) {
    boolean one = gates.size() == 1;
    console.show(
        Block.paragraph(
            one
                ? "Is it this gate? Found by its name or by earlier calls:"
                : "Is it one of these gates? Found by their names or by earlier calls:"),
        Block.numbered(gates));
    return Prompt.forWords(console)
        .until(
            one ? "yes, or Enter if it is not> " : "Number, or Enter if it is none of these> ",
            line ->
                line.isEmpty() || NoneWords.isSaid(line)
                    ? Prompt.Reading.of(Optional.<String>empty())
                    : Prompt.number(
                            one && YES.contains(line.toLowerCase(Locale.ROOT)) ? "1" : line,
                            gates.size())
                        .map(n -> Prompt.Reading.of(Optional.of(gates.get(n - 1))))
                        .orElse(
                            Prompt.Reading.again(
                                one
                                    ? "Type yes if it is this gate, or just press Enter."
                                    : "Type one of the numbers, or just press Enter.")));
  }

  /**
   * Asks which open case of this gate to continue; empty for a new one.
   *
   * @param said takes what the caller says instead of that, which is taken up afterwards
   */
  Optional<CaseId> goOn(String gate, Consumer<String> said) {
    List<CaseSummary> open =
        casebook.casesAt(gate).stream()
            .filter(c -> c.summary().state() == CaseStatus.OPEN)
            .filter(c -> !isInspection(c.id()))
            .toList();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    return GoOnWith.ask(
            console,
            open.size() == 1 ? "This gate has an open case" : "This gate has open cases",
            open.stream().map(CaseSummary::id).toList(),
            open.stream().map(this::line).toList(),
            "Number to go on with it; 0 if this is about something else",
            said.andThen(words -> console.say("Kept, and taken up in a moment.")))
        .flatMap(id -> id);
  }

  /** Whether the case is an inspection, which a caller cannot continue. */
  private boolean isInspection(CaseId id) {
    return CaseState.of(OpenCase.entries(casebook.events(id))).isInspection();
  }

  private String line(CaseSummary open) {
    CallLog log = log(open.id());
    return "Case "
        + open.id()
        + ", since "
        + CallWords.when(open.opened())
        + ": "
        + open.summary().title()
        + log.last(Tending.SENT).map(t -> "; " + CallWords.of(t)).orElse("")
        + log.stage()
            .filter(t -> t.what() != Tending.SENT)
            .map(t -> "; " + CallWords.of(t))
            .orElse("")
        + log.holder().map(h -> "; with " + h).orElse("");
  }
}
