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
 * What a measured check or site question reads.
 *
 * @param unit the card's unit, which a bare number takes that is stored; all numbers are kept in
 *     the quantity's canonical unit
 * @param counted what a count counts, such as years; empty for every other quantity
 * @param instrument row of the instrument table
 * @param procedureUncertainty standard uncertainty of how the reading is taken, canonical unit
 * @param least below this a reading is impossible, canonical unit
 * @param most above this a reading is impossible, canonical unit
 * @param units those that the person at work reads
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
  /** Letters of a unit, or the marks of feet and inches. */
  private static final Pattern UNIT = Pattern.compile("[\\p{L}'\"′″]");

  /** A value of fewer digits of its instrument would be told wrong if it were rounded to them. */
  private static final double LEAST_DIGITS = 5;

  /** As the card has it. */
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

  /** The same for somebody who works in these units. */
  Measures in(Units other) {
    return new Measures(
        quantity, unit, counted, instrument, procedureUncertainty, least, most, other);
  }

  /** The unit in which a value is shown, and which a bare number takes that is typed. */
  private Unit shown() {
    return units.of(unit);
  }

  /**
   * Reads what stands in a card or a case. A resistance that is too great for the meter (OL) is the
   * greatest that can be: an open circuit, or an insulation without fault.
   *
   * @return the value in the canonical unit
   * @throws ReadingException if it is no reading of this quantity
   */
  public double parse(String stored) {
    return parse(stored, example());
  }

  /**
   * The same of what is typed at a question.
   *
   * @param example a reading as it could be there, for whoever typed none
   */
  public double parse(String stored, String example) {
    if (isOpen(stored)) {
      return most;
    }
    return Reading.parse(uncounted(stored), quantity, unit, example).value();
  }

  /** Some reading of the quantity. */
  public String example() {
    return quantity.example();
  }

  /** A value as a bare number may stand in a case: in the unit of the card. */
  String bare(double value) {
    return new BigDecimal(unit.fromCanonical(value))
        .round(MathContext.DECIMAL32)
        .stripTrailingZeros()
        .toPlainString();
  }

  /**
   * What a person typed, as it is stored: a bare number with the unit that it takes.
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
    return quantity == Quantity.RESISTANCE && Double.isFinite(most) && Reading.isOverRange(stored);
  }

  /**
   * A reading as it was typed, with its value in the units of this person where it was typed in
   * those of another. What was typed keeps together, so that it is told from what is computed.
   */
  public String told(String stored) {
    if (isOpen(stored)) {
      return stored.strip();
    }
    if (!counted.isEmpty() || !UNIT.matcher(stored).find()) {
      return show(parse(stored));
    }
    Reading reading = Reading.parse(stored, quantity, unit);
    String typed = stored.strip().replace(' ', '\u00a0');
    return units.of(reading.unit()) == reading.unit()
        ? typed
        : typed + " (" + show(reading.value()) + ")";
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

  /** A value as it is shown. */
  public String show(double value) {
    String of = value == 1 ? singular() : counted;
    return quantity.show(value, shown()) + (counted.isEmpty() ? "" : " " + of);
  }

  private String singular() {
    return counted.replaceFirst("s$", "");
  }

  /**
   * A computed value, in three significant figures of the unit shown and no finer than its
   * instrument reads, as far as that leaves a figure to speak of: more would be pretence.
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

  /** The unit as it stands beside a prompt. */
  public String unitWord() {
    return counted.isEmpty() ? shown().symbol() : counted;
  }

  public boolean possible(double value) {
    return value >= least && value <= most;
  }
}
