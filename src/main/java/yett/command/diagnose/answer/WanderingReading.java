package yett.command.diagnose.answer;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.HeardAnswer;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/**
 * A reading that does not stand still, such as "2.6 to 9 ohm" or "between 24 and 27 V".
 *
 * @param said as it was typed
 * @param one the end that was named first
 * @param middle half way between the ends
 */
public record WanderingReading(
    String said, Answer.Read one, Answer.Read other, Answer.Read middle) {
  private static final String NUMBER = "([-+]?\\d+(?:[.,]\\d+)?)";

  /** A unit begins with no digit and has no blank in it. */
  private static final String UNIT = "([^\\d\\s.,;+-]\\S{0,8})?";

  /** Dots count only between blanks: "24..3" is a slip of the decimal point. */
  private static final Pattern RANGE =
      Pattern.compile(
          "(?i)[a-z ]*?"
              + NUMBER
              + "\\s*?"
              + UNIT
              + "\\s*(?:\\bto\\b|\\band\\b|-|\u2013|\u2014|(?<=\\s)\\.\\.+(?=\\s)|\u2026)\\s*"
              + NUMBER
              + "\\s*"
              + UNIT);

  /** Two readings, "12.3 and 12.9 V", are no range. */
  private static final Pattern TWO = Pattern.compile("(?i)(?!.*\\bbetween\\b).*\\band\\b.*");

  /** A line at this check as a range; empty if it is none, or a single reading. */
  public static Optional<WanderingReading> of(Check check, String line) {
    return check
        .measures()
        .filter(m -> HeardAnswer.reading(m, line).answer().isEmpty())
        .flatMap(m -> of(m, line));
  }

  /** Reads a line as two ends of a range; empty if it is none that can be measured so. */
  static Optional<WanderingReading> of(Measures measures, String line) {
    Matcher range = RANGE.matcher(line.strip());
    if (!range.matches() || TWO.matcher(line).matches()) {
      return Optional.empty();
    }
    String unit = range.group(4) == null ? "" : " " + range.group(4);
    String first = range.group(2) == null ? unit : " " + range.group(2);
    Optional<Answer.Read> one = read(measures, range.group(1) + first);
    Optional<Answer.Read> other = read(measures, range.group(3) + unit);
    if (one.isEmpty() || other.isEmpty() || one.get().value() == other.get().value()) {
      return Optional.empty();
    }
    double half = (one.get().value() + other.get().value()) / 2;
    return read(measures, measures.show(half))
        .map(middle -> new WanderingReading(line.strip(), one.get(), other.get(), middle));
  }

  static Optional<Answer.Read> read(Measures measures, String typed) {
    return HeardAnswer.reading(measures, typed).answer().flatMap(Answer::reading);
  }

  /** Whether it means the same for this check wherever it is read. */
  boolean isOneOutcome(Check check, Optional<Expectation> usual) {
    return outcome(check, one, usual).equals(outcome(check, other, usual));
  }

  /** What a reading means for this check; empty if the rules cannot say on this gate. */
  static Optional<String> outcome(Check check, Answer.Read read, Optional<Expectation> usual) {
    if (Interpretation.relative(check) && usual.isEmpty()) {
      return Optional.empty();
    }
    double low = usual.map(Expectation::low).orElse(Double.NaN);
    double high = usual.map(Expectation::high).orElse(Double.NaN);
    return Optional.of(
        Interpretation.likeliest(check, Interpretation.ofReading(check, read.value(), low, high)));
  }
}
