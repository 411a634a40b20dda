package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;
import yett.calculation.InstrumentUncertainty;
import yett.quantity.Unit;

/** The table of instruments, {@code shared/instruments.csv}: how well each can be trusted. */
public final class Instruments {
  private static final String TABLE = "/shared/instruments.csv";
  private static final Map<String, Instrument> ALL = read();

  /**
   * @param percent of reading
   * @param counts last digits
   * @param resolution one digit, in the canonical unit of the quantity
   */
  private record Instrument(double percent, double counts, double resolution) {}

  private Instruments() {}

  public static Set<String> names() {
    return ALL.keySet();
  }

  /**
   * Standard uncertainty of a reading: the instrument's limit taken as rectangular, and the
   * procedure's, combined by root-sum-square (JCGM 100).
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

  private static Map<String, Instrument> read() {
    CsvMapper mapper = new CsvMapper();
    Map<String, Instrument> all = new LinkedHashMap<>();
    try (InputStream table = Instruments.class.getResourceAsStream(TABLE);
        MappingIterator<Map<String, String>> rows =
            mapper
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(table)) {
      while (rows.hasNext()) {
        Map<String, String> row = rows.next();
        String unit = row.get("unit");
        double digit = Double.parseDouble(row.get("resolution"));
        all.put(
            row.get("instrument"),
            new Instrument(
                Double.parseDouble(row.get("percent")),
                Double.parseDouble(row.get("counts")),
                unit.isBlank() ? digit : Unit.parse(unit).differenceToCanonical(digit)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + TABLE, e);
    }
    return all;
  }
}
