package yett.knowledge;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import yett.quantity.Quantity;
import yett.quantity.Reading;
import yett.quantity.ReadingException;
import yett.quantity.Unit;

/**
 * What a measured check or site question reads.
 *
 * @param unit the unit shown; all numbers are kept in the quantity's canonical unit
 * @param counted what a count counts, such as years; empty for every other quantity
 * @param instrument row of the instrument table
 * @param procedureUncertainty standard uncertainty of how the reading is taken, canonical unit
 * @param least below this a reading is impossible, canonical unit
 * @param most above this a reading is impossible, canonical unit
 */
public record Measures(
    Quantity quantity,
    Unit unit,
    String counted,
    String instrument,
    double procedureUncertainty,
    double least,
    double most) {

  /**
   * Reads what a person typed.
   *
   * @return the value in the canonical unit
   * @throws ReadingException if it is no reading of this quantity
   */
  public double parse(String typed) {
    String text = typed.strip();
    if (!counted.isEmpty()) {
      String singular = counted.replaceFirst("s$", "");
      String lower = text.toLowerCase(Locale.ROOT);
      for (String word : new String[] {counted, singular}) {
        if (lower.endsWith(word)) {
          text = text.substring(0, text.length() - word.length()).strip();
          break;
        }
      }
    }
    return Reading.parse(text, quantity, unit).value();
  }

  /** A value as it is shown. */
  public String show(double value) {
    return quantity.show(value, unit) + (counted.isEmpty() ? "" : " " + counted);
  }

  /** A computed value, in three significant figures of the unit shown: more would be pretence. */
  public String showRounded(double value) {
    double shown = unit.fromCanonical(value);
    double rounded = new BigDecimal(shown).round(new MathContext(3)).doubleValue();
    return show(unit.toCanonical(rounded));
  }

  /** The unit as it stands beside a prompt. */
  public String unitWord() {
    return counted.isEmpty() ? unit.symbol() : counted;
  }

  public boolean possible(double value) {
    return value >= least && value <= most;
  }
}
