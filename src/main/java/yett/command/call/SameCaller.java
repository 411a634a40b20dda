package yett.command.call;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.casebook.CaseSummary;
import yett.command.common.Prompt;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.wording.CallWords;

/**
 * Checks whether the caller has another gate's case open, because the gate's name may have been
 * mistaken.
 */
record SameCaller(Sitting sitting) {
  /**
   * The open case that this call is about, if the desk says so; then this case is closed as the
   * same. While there is danger, the open cases are only named and nothing is asked.
   */
  Optional<CaseId> openCase() {
    List<CaseSummary> open = sitting.open().openCasesOfCaller();
    if (open.isEmpty()) {
      return Optional.empty();
    }
    List<String> lines = open.stream().map(SameCaller::line).toList();
    if (!sitting.moment().judgement().stops().isEmpty()) {
      sitting.say("Open under this name or number, too: " + String.join("; ", lines) + ".");
      return Optional.empty();
    }
    sitting.show(Block.heading("Open under this name or number"), Block.numbered(lines));
    Optional<CaseId> same =
        sitting.until(
            "Its number if it is about that gate; 0 if about another",
            line ->
                line.equals("0")
                    ? Prompt.Reading.of(Optional.empty())
                    : Prompt.number(line, open.size())
                        .map(n -> Prompt.Reading.of(Optional.of(open.get(n - 1).id())))
                        .orElse(
                            Prompt.Reading.again(
                                "Type the number of the case, or 0 for neither.")));
    same.ifPresent(this::close);
    return same;
  }

  private static String line(CaseSummary open) {
    return "Case "
        + open.id()
        + " at "
        + open.siteId()
        + ", since "
        + CallWords.when(open.opened())
        + ": "
        + open.summary().title();
  }

  private void close(CaseId other) {
    sitting.record(
        new Event.Tended(Tending.CANCELLED, "the same as case " + other),
        new Event.Closed(Ending.CANCELLED));
  }
}
