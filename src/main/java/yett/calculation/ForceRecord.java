package yett.calculation;

import java.util.ArrayList;
import java.util.List;
import yett.quantity.Quantity;

/**
 * Reads the file that a force meter recorded: lines of time and force, separated by commas,
 * semicolons or tabs, as meters and spreadsheets write them. A heading may name the columns and
 * their units, such as {@code time (ms);force (N)}; without one the first column is time in seconds
 * and the second force in newtons. A decimal comma is accepted where the columns are not separated
 * by commas. Blank lines, lines that begin with # and further columns are ignored.
 */
public final class ForceRecord {
  /** Most lines read: over a minute at 1000 samples a second, where a meter records 5 s. */
  private static final int LONGEST = 100_000;

  private final String name;
  private final List<ForceSample> samples = new ArrayList<>();
  private char separator;
  private ForceHeading heading;

  private ForceRecord(String name) {
    this.name = name;
  }

  /**
   * Reads the lines of a record.
   *
   * @param name of the file, for messages
   * @throws ForceRecordException if they cannot be read as a record; the message names line and
   *     column
   */
  public static ForceCurve read(String name, List<String> lines) {
    ForceRecord record = new ForceRecord(name);
    for (int number = 1; number <= lines.size(); number++) {
      if (number > LONGEST) {
        throw record.problem(
            number, "there are more than " + LONGEST + " lines", "Cut out the blow.");
      }
      String line = lines.get(number - 1);
      // Many exports begin with a byte order mark.
      record.take(number, (line.startsWith("\uFEFF") ? line.substring(1) : line).strip());
    }
    if (record.samples.size() < 2) {
      throw new ForceRecordException(
          name
              + ": there are "
              + (record.samples.isEmpty() ? "no" : "fewer than two")
              + " samples. Put a time and a force on each line, like 0.05, 120.");
    }
    return new ForceCurve(record.samples);
  }

  private void take(int number, String line) {
    if (line.isEmpty() || line.startsWith("#")) {
      return;
    }
    if (heading == null) {
      separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
    }
    List<String> cells = cells(line);
    if (heading == null) {
      boolean named = !cells.get(0).matches("[+-]?[.,]?\\d.*");
      heading = named ? heading(number, cells) : ForceHeading.USUAL;
      if (named) {
        return;
      }
    }
    if (cells.size() <= heading.last()) {
      throw problem(
          number,
          "there is no column " + (heading.last() + 1),
          "Separate time and force by a comma, a semicolon or a tab.");
    }
    if (separator == ',' && cells.size() > Math.max(heading.columns(), 2) && cells.size() >= 4) {
      throw problem(
          number,
          "there are " + cells.size() + " columns",
          "If these are decimal commas, separate the columns by semicolons.");
    }
    add(number, cells);
  }

  private ForceHeading heading(int number, List<String> cells) {
    try {
      return ForceHeading.of(cells);
    } catch (IllegalArgumentException e) {
      throw problem(number, e.getMessage(), "Write a heading like time (s), force (N).");
    }
  }

  private List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    for (String cell : line.split(java.util.regex.Pattern.quote(String.valueOf(separator)), -1)) {
      String plain = cell.strip();
      boolean quoted = plain.length() >= 2 && plain.startsWith("\"") && plain.endsWith("\"");
      cells.add(quoted ? plain.substring(1, plain.length() - 1).strip() : plain);
    }
    return cells;
  }

  private void add(int number, List<String> cells) {
    double time =
        heading.timeUnit().toCanonical(number(number, heading.time(), Quantity.TIME, cells));
    double force =
        heading.forceUnit().toCanonical(number(number, heading.force(), Quantity.FORCE, cells));
    if (!samples.isEmpty() && time <= samples.get(samples.size() - 1).time()) {
      throw problem(
          number,
          "column "
              + (heading.time() + 1)
              + " (time): "
              + cells.get(heading.time())
              + " does not come after the time before it",
          "Keep one record in a file, in the order of time.");
    }
    samples.add(new ForceSample(time, force));
  }

  private double number(int line, int column, Quantity quantity, List<String> cells) {
    String cell = cells.get(column);
    String plain = separator == ',' ? cell : cell.replace(',', '.');
    // Refuses the hexadecimal numbers, "NaN" and trailing f that parseDouble would accept.
    if (plain.matches("[+-]?(\\d{1,15}\\.?\\d{0,20}|\\.\\d{1,20})([eE][+-]?\\d{1,2})?")) {
      return Double.parseDouble(plain);
    }
    String shown = cell.length() > 20 ? cell.substring(0, 20) + "..." : cell;
    throw problem(
        line,
        "column "
            + (column + 1)
            + " ("
            + quantity.label()
            + "): "
            + (cell.isEmpty() ? "there is nothing" : "\"" + shown + "\" is no number"),
        "Write numbers only; the unit belongs into the heading.");
  }

  private ForceRecordException problem(int line, String what, String advice) {
    return new ForceRecordException(name + ", line " + line + ", " + what + ". " + advice);
  }
}
