package yett.worksheet;

import java.util.List;
import java.util.Optional;
import yett.calculation.Range;
import yett.quantity.Quantity;
import yett.quantity.Unit;

/**
 * One thing that a calculation has to be told.
 *
 * <pre>{@code
 * Input.reading("length", Unit.METRE, "length of the run, one way").possible(0, 2000)
 * Input.reading("conductor-temperature", Unit.CELSIUS, "temperature of the wire").usually("75 degC")
 * }</pre>
 *
 * @param id what is typed before the equals sign
 * @param words what it is, to follow "Type the ..."
 * @param unit the usual unit, which a bare number takes; a count for what is no reading
 * @param usual what Enter takes, as it would be typed
 * @param optional whether the calculation does without
 * @param possible in the usual unit; what lies outside is refused
 * @param good in the usual unit; for what lies outside, the result is given with a remark
 * @param slope whether it may be typed as an angle or as rise over run, too
 * @param choices of an input of that kind, else empty
 */
public record Input(
    String id,
    Kind kind,
    String words,
    Unit unit,
    Optional<String> usual,
    boolean optional,
    Range possible,
    Range good,
    boolean slope,
    List<Choice> choices) {

  /** The form in which an input is typed. */
  public enum Kind {
    /** A number with a unit, perhaps with its limits of error: {@code 24.3 V +- 0.2 V}. */
    READING,
    /** A whole number. */
    WHOLE,
    /** One of several words. */
    CHOICE,
    /** The name of a file. */
    FILE
  }

  private static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  public Input {
    choices = List.copyOf(choices);
  }

  public static Input reading(String id, Unit unit, String words) {
    return of(id, Kind.READING, words, unit, List.of());
  }

  public static Input whole(String id, String words) {
    return of(id, Kind.WHOLE, words, Unit.ONE, List.of());
  }

  public static Input choice(String id, String words, Choice... choices) {
    return choice(id, words, List.of(choices));
  }

  public static Input choice(String id, String words, List<Choice> choices) {
    return of(id, Kind.CHOICE, words, Unit.ONE, choices);
  }

  public static Input file(String id, String words) {
    return of(id, Kind.FILE, words, Unit.ONE, List.of());
  }

  private static Input of(String id, Kind kind, String words, Unit unit, List<Choice> choices) {
    return new Input(id, kind, words, unit, Optional.empty(), false, ANY, ANY, false, choices);
  }

  /** A copy with a usual value for people who give none, written as they would type it. */
  public Input usually(String typed) {
    return new Input(
        id, kind, words, unit, Optional.of(typed), optional, possible, good, slope, choices);
  }

  /** A copy that is optional; without it the calculation has fewer results. */
  public Input mayBeLeftOut() {
    return new Input(id, kind, words, unit, usual, true, possible, good, slope, choices);
  }

  /** A copy that refuses values outside a range in the usual unit. */
  public Input possible(double least, double most) {
    Range range = new Range(least, most);
    return new Input(id, kind, words, unit, usual, optional, range, good, slope, choices);
  }

  /**
   * A copy with a remark on values outside a range in the usual unit, where the formula or its
   * table ends.
   */
  public Input good(double least, double most) {
    Range range = new Range(least, most);
    return new Input(id, kind, words, unit, usual, optional, possible, range, slope, choices);
  }

  /** A copy that accepts degrees, in/ft and mm/m as well as percent. */
  public Input asSlope() {
    return new Input(id, kind, words, unit, usual, optional, possible, good, true, choices);
  }

  public Quantity quantity() {
    return unit.quantity();
  }

  /** Whether the calculation cannot be done without it. */
  public boolean needed() {
    return usual.isEmpty() && !optional;
  }

  /** A canonical value shown in this input's unit. */
  public String show(double canonical) {
    return quantity().show(canonical, unit);
  }

  /** A range in the usual unit in words, {@code 0 m to 2000 m}; empty for any value. */
  public Optional<String> inWords(Range range) {
    boolean low = Double.isFinite(range.low());
    boolean high = Double.isFinite(range.high());
    if (!low && !high) {
      return Optional.empty();
    }
    if (low && high) {
      return Optional.of(bound(range.low()) + " to " + bound(range.high()));
    }
    return Optional.of(low ? "from " + bound(range.low()) : "up to " + bound(range.high()));
  }

  private String bound(double inOwnUnit) {
    return show(unit.toCanonical(inOwnUnit));
  }
}
