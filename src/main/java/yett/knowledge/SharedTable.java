package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/** Reads a reference table from the folder {@code shared}. */
final class SharedTable {
  private SharedTable() {}

  /** The rows of a table, each as column title to cell. */
  static List<Map<String, String>> read(String name) {
    try (InputStream table = SharedTable.class.getResourceAsStream("/shared/" + name);
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(table)) {
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table " + name, e);
    }
  }
}
