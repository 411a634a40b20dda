package yett.worksheet;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import yett.quantity.Unit;

/**
 * One thing that a calculation tells, or works out on the way.
 *
 * <pre>{@code
 * number("left", Unit.VOLT, "left at the end").by(v -> v.of("supply") - v.of("drop"))
 * text("verdict", "verdict").by(v -> v.of("share") < 80 ? "worn out" : "good")
 * }</pre>
 *
 * @param unit the metric one that it is shown in; empty for a result in words
 * @param when whether these inputs can give it; it is left out otherwise
 * @param number in the canonical unit; not a number for words
 * @param text as it stands in a sentence
 */
public record Output(
    String id,
    String words,
    Optional<Unit> unit,
    Predicate<Values> when,
    ToDoubleFunction<Values> number,
    Function<Values, String> text) {

  /** Values below this in any unit of a result are rounding errors of zero. */
  private static final double NOTHING = 1e-9;

  /** A number whose formula is still to be given. */
  public record Measure(String id, Unit unit, String words) {
    /** With a formula in the unit in which it is shown. */
    public Output by(ToDoubleFunction<Values> formula) {
      return by(unit, formula);
    }

    /** With a formula in another unit than the one in which it is shown. */
    public Output by(Unit worked, ToDoubleFunction<Values> formula) {
      return new Output(
          id,
          words,
          Optional.of(unit),
          values -> true,
          values -> worked.toCanonical(rounded(formula.applyAsDouble(values))),
          values -> NumberWords.told(values.of(id), unit));
    }

    private static double rounded(double value) {
      return Math.abs(value) < NOTHING ? 0 : value;
    }
  }

  /** A result in words whose wording is still to be given. */
  public record Wording(String id, String words) {
    public Output by(Function<Values, String> text) {
      return new Output(id, words, Optional.empty(), values -> true, values -> Double.NaN, text);
    }
  }

  /** A copy that is left out if the condition does not hold. */
  public Output when(Predicate<Values> condition) {
    return new Output(id, words, unit, when.and(condition), number, text);
  }

  /** A copy that is left out if one of these inputs or results is missing. */
  public Output given(String... needed) {
    Predicate<Values> all = values -> true;
    for (String name : needed) {
      all = all.and(values -> values.has(name));
    }
    return when(all);
  }

  /** The US customary unit; the same unit if that system has no other. */
  public Optional<Unit> customary() {
    return unit.map(NumberWords::customary);
  }

  /** A canonical value in both systems of units, or in one if they do not differ. */
  public String show(double canonical) {
    Unit metric = unit.orElseThrow();
    Unit customary = NumberWords.customary(metric);
    String shown = metric.quantity().show(canonical, metric);
    return customary == metric
        ? shown
        : shown + " (" + metric.quantity().show(canonical, customary) + ")";
  }
}
