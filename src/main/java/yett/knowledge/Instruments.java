package yett.knowledge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import yett.calculation.InstrumentUncertainty;
import yett.quantity.Unit;

/** The table of instruments, {@code shared/instruments.csv}, with the uncertainty of each. */
public final class Instruments {
  private static final Map<String, Instrument> ALL = read();

  /**
   * One instrument.
   *
   * @param percent of reading
   * @param counts last digits
   * @param resolution value of one digit, in the canonical unit of the quantity
   */
  private record Instrument(double percent, double counts, double resolution) {}

  private Instruments() {}

  public static Set<String> names() {
    return ALL.keySet();
  }

  /**
   * Standard uncertainty of a reading in the canonical unit: that of the instrument, from its limit
   * as a rectangular distribution, and that of the procedure, combined by root-sum-square (JCGM
   * 100).
   *
   * @param value canonical unit
   */
  public static double uncertainty(Measures measures, double value) {
    Instrument instrument = ALL.getOrDefault(measures.instrument(), new Instrument(0, 0, 0));
    return InstrumentUncertainty.combined(
        InstrumentUncertainty.standard(
            value, instrument.percent(), instrument.counts(), instrument.resolution()),
        measures.procedureUncertainty());
  }

  /** A value rounded to whole digits of the instrument. */
  public static double rounded(Measures measures, double value) {
    double digit = resolution(measures);
    return digit <= 0 ? value : Math.round(value / digit) * digit;
  }

  /** The value of one digit of the instrument, in the canonical unit; 0 if unknown. */
  static double resolution(Measures measures) {
    Instrument instrument = ALL.get(measures.instrument());
    return instrument == null ? 0 : instrument.resolution();
  }

  private static Map<String, Instrument> read() {
    Map<String, Instrument> all = new LinkedHashMap<>();
    for (Map<String, String> row : SharedTable.read("instruments.csv")) {
      String unit = row.get("unit");
      double digit = Double.parseDouble(row.get("resolution"));
      all.put(
          row.get("instrument"),
          new Instrument(
              Double.parseDouble(row.get("percent")),
              Double.parseDouble(row.get("counts")),
              unit.isBlank() ? digit : Unit.parse(unit).differenceToCanonical(digit)));
    }
    return all;
  }
}
