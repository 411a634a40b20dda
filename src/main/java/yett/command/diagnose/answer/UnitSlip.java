package yett.command.diagnose.answer;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.HeardAnswer;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Answer.Read;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/**
 * Asks back about a reading whose unit is probably a slip: 26.1 mV where 26.1 V would be usual. In
 * an inspection it would fail a sound battery, and elsewhere point to a fault that is not there.
 */
public record UnitSlip(Sitting sitting) {
  /** By how much a slip of the unit is out at least: a thousand, or the square of ten. */
  private static final double FAR = 100;

  /** A reading this near to the usual range may be a fault, but is no slip. */
  private static final double NEAR = 3;

  private static final Pattern SINGLE = Pattern.compile("([-+]?[\\d.,]+)\\s*([^\\d\\s]\\D*)");

  /** The answer that is meant; empty if neither is, so that the question is asked again. */
  public Optional<Answer> meant(Check check, Answer answer, Optional<Expectation> usual) {
    Optional<Read> read = answer.reading();
    Optional<Read> other = read.flatMap(r -> instead(check, r, usual));
    if (other.isEmpty()) {
      return Optional.of(answer);
    }
    return new Choices(sitting)
        .of(
            read.get().typed() + " is far from anything usual here. Which is it?",
            List.of(other.get(), read.get()),
            Read::typed)
        .map(r -> r);
  }

  /** The same number in the unit of the question, if only that is near to what is usual. */
  static Optional<Read> instead(Check check, Read read, Optional<Expectation> usual) {
    Matcher typed = SINGLE.matcher(read.typed().strip());
    if (check.measures().isEmpty() || !typed.matches()) {
      return Optional.empty();
    }
    String other = typed.group(1) + " " + check.measures().get().unitWord();
    double[] range = Interpretation.range(check, 0, usual);
    return HeardAnswer.reading(check.measures().get(), other)
        .answer()
        .flatMap(Answer::reading)
        .filter(r -> isOff(read.value(), range, FAR) && !isOff(r.value(), range, NEAR));
  }

  private static boolean isOff(double value, double[] range, double times) {
    return value < range[0] / times || value > range[1] * times;
  }
}
