package yett.knowledge;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import yett.quantity.Quantity;
import yett.quantity.Reading;
import yett.quantity.ReadingException;
import yett.quantity.Unit;
import yett.quantity.Units;

/**
 * The quantity, unit and limits of a measured check or site question.
 *
 * @param unit the card's unit, which a stored bare number has; all numbers are kept in the
 *     quantity's canonical unit
 * @param counted what a count counts, such as years; empty for every other quantity
 * @param instrument row of the instrument table
 * @param procedureUncertainty standard uncertainty of the procedure, canonical unit
 * @param least lowest possible reading, canonical unit
 * @param most highest possible reading, canonical unit
 * @param units the units that the person at work uses
 */
public record Measures(
    Quantity quantity,
    Unit unit,
    String counted,
    String instrument,
    double procedureUncertainty,
    double least,
    double most,
    Units units) {
  /** The start of a unit: a letter, or a mark for feet or inches. */
  private static final Pattern UNIT = Pattern.compile("[\\p{L}'\"′″]");

  /**
   * Fewest digits of its instrument for which a value is rounded to them; with fewer, rounding
   * would distort it.
   */
  private static final double LEAST_DIGITS = 5;

  /** As written on the card, in SI units. */
  Measures(
      Quantity quantity,
      Unit unit,
      String counted,
      String instrument,
      double procedureUncertainty,
      double least,
      double most) {
    this(quantity, unit, counted, instrument, procedureUncertainty, least, most, Units.SI);
  }

  /** A copy for a person who uses these units. */
  Measures in(Units other) {
    return new Measures(
        quantity, unit, counted, instrument, procedureUncertainty, least, most, other);
  }

  /** The unit in which values are shown, and which a typed bare number takes. */
  private Unit shown() {
    return units.of(unit);
  }

  /**
   * Reads a value in a card or a case. A resistance above the meter's range (OL) counts as the
   * greatest possible reading: an open circuit, or insulation without fault.
   *
   * @return the value in the canonical unit
   * @throws ReadingException if it is no reading of this quantity
   */
  public double parse(String stored) {
    return parse(stored, example());
  }

  /**
   * Reads a value that was typed at a question.
   *
   * @param example a possible reading, for the message if it cannot be read
   */
  public double parse(String stored, String example) {
    if (isOpen(stored)) {
      return most;
    }
    boolean number = stored.chars().anyMatch(Character::isDigit); // else the message names a unit
    return Reading.parse(uncounted(stored), quantity, number ? unit : shown(), example).value();
  }

  /** An example of a reading. */
  public String example() {
    return quantity.example();
  }

  /** A value as a bare number in the unit of the card, as cases may store it. */
  String bare(double value) {
    return new BigDecimal(unit.fromCanonical(value))
        .round(MathContext.DECIMAL32)
        .stripTrailingZeros()
        .toPlainString();
  }

  /**
   * The text to store for what a person typed; a bare number gets its unit.
   *
   * @throws ReadingException if it is no reading of this quantity
   */
  public String asStored(String typed) {
    String text = typed.strip();
    Unit shown = shown();
    boolean bare = shown != unit && text.matches("[-+]?[\\d.,]+([ -]\\d+/\\d+)?");
    return bare ? text + " " + shown.symbol() : text;
  }

  private boolean isOpen(String stored) {
    return quantity == Quantity.RESISTANCE
        && Double.isFinite(most)
        && Reading.isOverRange(stored, quantity);
  }

  /** A value for the screen; a reading above the range of the meter as it was typed. */
  public String shown(String stored, double value) {
    return isOpen(stored) ? stored.strip() : show(value);
  }

  /**
   * A stored reading as it was typed, followed by its value in this person's units if it was typed
   * in others. No-break spaces mark the typed part, to tell it from computed values.
   */
  public String told(String stored) {
    if (isOpen(stored)) {
      return stored.strip();
    }
    if (!counted.isEmpty() || !UNIT.matcher(stored).find()) {
      return asRead(stored, parse(stored));
    }
    Reading reading = Reading.parse(stored, quantity, unit);
    String typed = stored.strip().replace(' ', '\u00a0');
    return units.of(reading.unit()) == reading.unit()
        ? typed
        : typed + " (" + showRounded(reading.value()) + ")";
  }

  /**
   * A reading as it was typed, followed by its value in this person's units if it was typed in
   * others. The text of a case from another casebook may be anything.
   */
  public String asTold(String stored, double value) {
    try {
      return told(stored).replace('\u00a0', ' ');
    } catch (ReadingException e) {
      return showRounded(value);
    }
  }

  /**
   * A reading as it was typed if that was in this person's units, otherwise its value in them. The
   * text of a case from another casebook may be anything.
   */
  public String asRead(String stored, double value) {
    try {
      if (counted.isEmpty() && !isOpen(stored) && UNIT.matcher(stored).find()) {
        Reading reading = Reading.parse(stored, quantity, unit);
        return units.of(reading.unit()) == reading.unit() ? stored.strip() : showRounded(value);
      }
    } catch (ReadingException e) {
      return showRounded(value);
    }
    return shown() == unit ? show(value) : showRounded(value);
  }

  private String uncounted(String typed) {
    String text = typed.strip();
    if (!counted.isEmpty()) {
      String lower = text.toLowerCase(Locale.ROOT);
      for (String word : new String[] {counted, singular()}) {
        if (lower.endsWith(word)) {
          text = text.substring(0, text.length() - word.length()).strip();
          break;
        }
      }
    }
    return text;
  }

  /** A value in the unit shown, with its unit. */
  public String show(double value) {
    String of = value == 1 ? singular() : counted;
    return quantity.show(value, shown()) + (counted.isEmpty() ? "" : " " + of);
  }

  /**
   * A reading of which only the value is kept. It was typed in the units in which it has fewer
   * digits; in others it is no more exact than computed, so 1.86 mm is not 0.07323 in.
   */
  public String showRead(double value) {
    return digits(value, shown()) <= digits(value, other()) ? show(value) : showRounded(value);
  }

  /** The unit of somebody who uses the other system. */
  private Unit other() {
    return (units == Units.SI ? Units.US : Units.SI).of(unit);
  }

  private static int digits(double value, Unit unit) {
    return new BigDecimal(unit.fromCanonical(value))
        .round(MathContext.DECIMAL32)
        .stripTrailingZeros()
        .precision();
  }

  /** A computed difference of two values, with this many significant figures. */
  public String showChange(double change, int figures) {
    double inUnit = shown().fromCanonical(change) - shown().fromCanonical(0);
    double rounded = new BigDecimal(inUnit).round(new MathContext(figures)).doubleValue();
    return show(shown().toCanonical(rounded));
  }

  private String singular() {
    return counted.replaceFirst("s$", "");
  }

  /**
   * A computed value in the unit shown, with three significant figures but no finer than the
   * instrument reads, as long as that leaves a significant figure.
   */
  public String showRounded(double value) {
    BigDecimal rounded = new BigDecimal(shown().fromCanonical(value)).round(new MathContext(3));
    double digit = Instruments.resolution(this);
    double inUnit = Math.abs(shown().fromCanonical(digit) - shown().fromCanonical(0));
    if (inUnit > 0 && rounded.abs().doubleValue() >= LEAST_DIGITS * inUnit) {
      int places = -(int) Math.floor(Math.log10(inUnit));
      rounded = rounded.setScale(Math.min(places, rounded.scale()), RoundingMode.HALF_EVEN);
    }
    return show(shown().toCanonical(rounded.doubleValue()));
  }

  /** The unit as shown beside a prompt. */
  public String unitWord() {
    return counted.isEmpty() ? shown().symbol() : counted;
  }

  public boolean possible(double value) {
    return value >= least && value <= most;
  }
}
