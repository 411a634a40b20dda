package yett.command.diagnose.answer;

import java.util.List;
import java.util.Optional;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.wording.Wording;

/**
 * Takes a reading that wanders. If it means the same at both ends, its middle counts; otherwise the
 * person says by which end to judge. What was said is kept in the record.
 */
public record Wandering(Sitting sitting) {
  /** The reading that counts; empty if the person chose neither end. */
  public Optional<Answer> take(Check check, WanderingReading said) {
    Optional<Expectation> usual = sitting.moment().judgement().expectation(check.id());
    Optional<Answer.Read> counts =
        said.isOneOutcome(check, usual)
            ? Optional.of(said.middle())
            : new Choices(sitting)
                .of(
                    "It wanders: which end is it to be judged by?",
                    List.of(said.one(), said.other()),
                    end ->
                        shown(check, end)
                            + WanderingReading.outcome(check, end, usual)
                                .map(o -> ": " + Wording.spaced(o))
                                .orElse(""));
    counts.ifPresent(
        end ->
            sitting.record(
                new Event.Noted(
                    "The reading wanders, " + said.said() + "; judged by " + shown(check, end),
                    Optional.of(check.id()))));
    return counts.map(end -> end);
  }

  private static String shown(Check check, Answer.Read read) {
    return check.measures().orElseThrow().show(read.value());
  }
}
