package yett.command.common;

import java.util.List;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import yett.knowledge.SheetCell;

/** Writes CSV for a spreadsheet. */
public final class SheetText {
  private static final ObjectWriter CSV = new CsvMapper().writer();

  private SheetText() {}

  /** CSV text from lines of cells; the first line is the header. */
  public static String csv(List<List<String>> lines) {
    return CSV.writeValueAsString(lines);
  }

  /**
   * A name that a person chose, protected so that a spreadsheet does not evaluate it as a formula.
   */
  public static String name(String chosen) {
    return SheetCell.words(chosen);
  }
}
