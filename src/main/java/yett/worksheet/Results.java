package yett.worksheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.quantity.Unit;

/** What a calculation came to: numbers and words by the ids of its outputs. */
public final class Results {
  private final Map<String, Double> numbers = new LinkedHashMap<>();
  private final Map<String, String> texts = new LinkedHashMap<>();
  private final Map<String, Double> uncertainties = new LinkedHashMap<>();
  private Optional<Plot> plot = Optional.empty();

  /** Smaller in any unit of a result is what rounding leaves of nothing. */
  private static final double NOTHING = 1e-9;

  /** Adds a number in a unit. */
  public Results with(String id, double value, Unit unit) {
    numbers.put(id, unit.toCanonical(Math.abs(value) < NOTHING ? 0 : value));
    return this;
  }

  /** Adds a result in words. */
  public Results with(String id, String words) {
    texts.put(id, words);
    return this;
  }

  /** Adds a drawing. */
  public Results with(Plot drawing) {
    plot = Optional.of(drawing);
    return this;
  }

  /** Whether that could be told. */
  public boolean has(String id) {
    return numbers.containsKey(id) || texts.containsKey(id);
  }

  /** A number in a unit. */
  public double in(String id, Unit unit) {
    return unit.fromCanonical(
        number(id).orElseThrow(() -> new IllegalStateException("no result " + id)));
  }

  /** The combined standard uncertainty of a number in a unit; 0 if no input carries one. */
  public double uncertainty(String id, Unit unit) {
    return uncertainties.getOrDefault(id, 0.0) / unit.differenceToCanonical(1);
  }

  void uncertain(String id, double canonical) {
    uncertainties.put(id, canonical);
  }

  OptionalDouble number(String id) {
    Double number = numbers.get(id);
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  Optional<Plot> plot() {
    return plot;
  }

  /** A result in words; empty if it could not be told. */
  public Optional<String> text(String id) {
    return Optional.ofNullable(texts.get(id));
  }
}
