package yett.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;

/**
 * Converts a prior between the form in which people say it, of a hundred faulty gates, and the form
 * of a card.
 */
public final class Priors {
  private Priors() {}

  /** No known cause is behind more than this share of the faults; considered judgement. */
  private static final double HIGH = 0.2;

  /** Remarks in sentences on causes with a prior that few causes can have. */
  static List<String> remarks(RuleBase base) {
    return ordinary(base)
        .filter(c -> c.prior() > HIGH && base.isOwn("cause " + c.id()))
        .map(c -> "Cause " + c.id() + ": " + tooHigh(c.id(), c.prior(), base))
        .toList();
  }

  /** What an answer means, if it is more than is likely. */
  static List<String> told(String ofAHundred, RuleBase base) {
    double prior = Double.parseDouble(figure(ofAHundred));
    return prior > HIGH
        ? List.of("This is very high: " + tooHigh("", prior, base) + " Type back to correct it.")
        : List.of();
  }

  private static String tooHigh(String cause, double prior, RuleBase base) {
    return "its prior says that it is there "
        + words(prior)
        + "."
        + ordinary(base)
            .filter(c -> !c.id().equals(cause))
            .max(Comparator.comparingDouble(Cause::prior))
            .map(
                c ->
                    " The highest of the other causes, "
                        + c.id()
                        + ", is "
                        + words(c.prior())
                        + ".")
            .orElse("")
        + " It will come first at gates that have something else.";
  }

  private static Stream<Cause> ordinary(RuleBase base) {
    return base.causes().values().stream()
        .filter(c -> !c.id().equals(Cause.NOTHING_WRONG) && !c.id().equals(Cause.NOT_IN_RULE_BASE));
  }

  static Optional<String> complaint(String ofAHundred) {
    return CardQuestions.number(0.01, 90).apply(ofAHundred);
  }

  /** The form of a card. */
  static String figure(String ofAHundred) {
    return String.format(Locale.ROOT, "%.5f", Double.parseDouble(ofAHundred) / 100)
        .replaceFirst("0+$", "")
        .replaceFirst("\\.$", "");
  }

  /** The form in which people say it. */
  public static String words(double prior) {
    return "at "
        + new BigDecimal(100 * prior).round(new MathContext(3)).stripTrailingZeros().toPlainString()
        + " of a hundred faulty gates";
  }
}
