package yett.command.gates;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;
import yett.command.common.UsageException;
import yett.files.BoundedFile;

/**
 * A sheet from a spreadsheet: CSV in UTF-8 with commas, semicolons or tabs, column names in the
 * first line. All problems are reported together, each with line and column.
 */
final class SheetFile {
  /** In bytes; the sheet of a firm with a thousand gates is smaller. */
  private static final int LARGEST = 1 << 22;

  private static final int MOST_TOLD = 20;

  private final String name;
  private final List<String> head;
  private final List<Row> rows;
  private final List<String> problems = new ArrayList<>();

  /**
   * A line that is not empty.
   *
   * @param line number of the line on which it begins, from 1
   */
  record Row(int line, List<String> cells) {
    /** The cell in a column; empty if the line ends before it. */
    String cell(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }
  }

  private SheetFile(String name, List<Row> lines) {
    this.name = name;
    this.head = lines.isEmpty() ? List.of() : lines.get(0).cells();
    this.rows = lines.isEmpty() ? List.of() : lines.subList(1, lines.size());
  }

  /**
   * @throws UsageException if the file cannot be read
   */
  static SheetFile read(String name) {
    try {
      String text = BoundedFile.text(Path.of(name), LARGEST).replaceFirst("^\uFEFF", "");
      return new SheetFile(name, lines(text));
    } catch (JacksonException e) {
      throw new UsageException(
          name
              + ", line "
              + e.getLocation().getLineNr()
              + ": this is not valid CSV: a quotation mark is open or in the wrong place. Save"
              + " the sheet as CSV (UTF-8).");
    } catch (CharacterCodingException e) {
      throw new UsageException(name + " is not UTF-8 text. Save the sheet as CSV (UTF-8).");
    } catch (IOException | InvalidPathException e) {
      throw new UsageException(
          name + " cannot be read, or is larger than 4 MiB. Name another file.");
    }
  }

  private static List<Row> lines(String text) {
    String first = text.lines().findFirst().orElse("");
    char separator = first.indexOf('\t') >= 0 ? '\t' : more(first, ';', ',') ? ';' : ',';
    List<Row> lines = new ArrayList<>();
    try (MappingIterator<String[]> read =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvReadFeature.WRAP_AS_ARRAY)
            .with(CsvSchema.emptySchema().withColumnSeparator(separator))
            .readValues(text)) {
      int line = 1;
      while (read.hasNextValue()) {
        List<String> cells = Arrays.stream(read.nextValue()).map(String::strip).toList();
        if (cells.stream().anyMatch(c -> !c.isEmpty())) {
          lines.add(new Row(line, cells));
        }
        line = read.currentLocation().getLineNr();
      }
    }
    return lines;
  }

  private static boolean more(String line, char one, char other) {
    return line.chars().filter(c -> c == one).count()
        > line.chars().filter(c -> c == other).count();
  }

  List<String> head() {
    return head;
  }

  List<Row> rows() {
    return rows;
  }

  /** Position of the column with this name, ignoring case. */
  int column(String wanted) {
    for (int i = 0; i < head.size(); i++) {
      if (head.get(i).equalsIgnoreCase(wanted)) {
        return i;
      }
    }
    throw new UsageException(
        name
            + ", line 1: there is no column "
            + wanted
            + ". Write the names of the columns there.");
  }

  /** Notes a problem at this place. */
  void problem(Row row, int column, String what) {
    problems.add(
        name + ", line " + row.line() + ", column " + (column + 1) + column(column) + ": " + what);
  }

  void problemInHead(int column, String what) {
    problems.add(name + ", line 1, column " + (column + 1) + ": " + what);
  }

  private String column(int column) {
    return column < head.size() && !head.get(column).isEmpty() ? " (" + head.get(column) + ")" : "";
  }

  /**
   * @throws UsageException with all problems, if there are any
   */
  void refuseIfWrong() {
    if (problems.isEmpty()) {
      return;
    }
    List<String> told = new ArrayList<>(problems.subList(0, Math.min(MOST_TOLD, problems.size())));
    if (problems.size() > MOST_TOLD) {
      told.add("And " + (problems.size() - MOST_TOLD) + " more.");
    }
    told.add("Nothing was imported. Correct the file and run the command again.");
    throw new UsageException(String.join("\n", told));
  }

  /**
   * A name without the mark that {@code SheetText} put before it to stop a spreadsheet from
   * evaluating it.
   */
  static String name(String cell) {
    return cell.matches("(?s)'[=+\\-@].*") ? cell.substring(1) : cell;
  }
}
