package yett.command.common;

import java.util.List;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import yett.knowledge.SheetCell;

/** Lines and cells for a spreadsheet: CSV. */
public final class SheetText {
  private static final ObjectWriter CSV = new CsvMapper().writer();

  private SheetText() {}

  /** Cells by line; the first line is the head. */
  public static String csv(List<List<String>> lines) {
    return CSV.writeValueAsString(lines);
  }

  /** A name that somebody chose. A spreadsheet works out what begins like a formula. */
  public static String name(String chosen) {
    return SheetCell.words(chosen);
  }
}
