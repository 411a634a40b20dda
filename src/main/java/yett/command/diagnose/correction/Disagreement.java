package yett.command.diagnose.correction;

import java.util.List;
import java.util.Optional;
import yett.command.common.Prompt;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.evidence.Conflict;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;

/**
 * Asks which of several answers that hardly fit together should be looked at again, while somebody
 * is there.
 */
public record Disagreement(Sitting sitting) {
  /** Asks if answers have come into disagreement since that moment. */
  public void ask(Moment before) {
    Moment now = sitting.moment();
    Optional<Conflict> conflict =
        now.conflict().filter(c -> !before.conflict().equals(now.conflict()));
    List<CaseState.Answered> answers =
        conflict
            .map(c -> c.parts().stream().flatMap(p -> given(p, now).stream()).toList())
            .orElse(List.of());
    if (answers.size() < 2) {
      return;
    }
    Corrections corrections = new Corrections(sitting);
    sitting.show(Block.numbered(answers.stream().map(corrections::told).toList()));
    sitting
        .until(
            "Number of the one to check again, or Enter if all are right",
            line ->
                line.isEmpty()
                    ? Prompt.Reading.of(Optional.<CaseState.Answered>empty())
                    : Prompt.number(line, answers.size())
                        .map(n -> Prompt.Reading.of(Optional.of(answers.get(n - 1))))
                        .orElse(
                            Prompt.Reading.again(
                                "Type a number from 1 to "
                                    + answers.size()
                                    + ", or just press Enter.")))
        .ifPresent(corrections::again);
  }

  private Optional<CaseState.Answered> given(Conflict.Part part, Moment now) {
    return now.state()
        .given(part.event())
        .filter(a -> sitting.base().checks().containsKey(a.check()));
  }
}
