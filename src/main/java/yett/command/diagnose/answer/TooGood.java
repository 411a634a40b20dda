package yett.command.diagnose.answer;

import java.util.Optional;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Answer.Read;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;
import yett.wording.UsualRangeWords;

/**
 * Asks back about a reading that is too good to be true: in order, because nothing is wrong with a
 * gate that reads so, but further outside the usual range than that is wide. 232 mm for 24 pitches
 * of a chain that has 381 mm when it is new is a miscount or another chain, and would pass for a
 * chain without wear.
 */
public record TooGood(Sitting sitting) {
  /** Whether the reading may count: it is near enough, or the person has confirmed it. */
  public boolean isMeant(Check check, Answer answer, Optional<Expectation> usual) {
    Optional<Read> read =
        answer.reading().filter(r -> usual.filter(u -> is(check, r.value(), u)).isPresent());
    if (read.isEmpty()) {
      return true;
    }
    Measures measures = check.measures().orElseThrow();
    sitting.say(
        read.get().typed()
            + " is far from the usual "
            + UsualRangeWords.words(measures, usual.get().low(), usual.get().high())
            + ", on the side where nothing is wrong with a gate. Is the reading right?");
    return sitting.yes("yes to keep it, no to read again");
  }

  static boolean is(Check check, double value, Expectation usual) {
    double width = usual.high() - usual.low();
    if (check.measures().isEmpty() || width <= 0) {
      return false;
    }
    double[] inOrder = Interpretation.range(check, 0, Optional.of(usual));
    return value < usual.low() - width && inOrder[0] == Double.NEGATIVE_INFINITY
        || value > usual.high() + width && inOrder[1] == Double.POSITIVE_INFINITY;
  }
}
