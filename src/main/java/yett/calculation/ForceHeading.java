package yett.calculation;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.quantity.Quantity;
import yett.quantity.ReadingException;
import yett.quantity.Unit;

/**
 * Which column of a record is time and which is force, and in what units.
 *
 * @param time column from 0
 * @param force column from 0
 * @param columns how many there are
 */
record ForceHeading(int time, Unit timeUnit, int force, Unit forceUnit, int columns) {
  /** The columns of a record without a heading. */
  static final ForceHeading USUAL = new ForceHeading(0, Unit.SECOND, 1, Unit.NEWTON, 2);

  /** A column's name, perhaps with its unit: {@code Time [ms]}, {@code force/N}, {@code t in s}. */
  private static final Pattern COLUMN =
      Pattern.compile(
          "(time|t|force|f)(?:(?:\\s*[\\[(/,_]\\s*|\\s+in\\s+|\\s+)([^\\])]*)[\\])]?)?",
          Pattern.CASE_INSENSITIVE);

  /**
   * The heading with these column names.
   *
   * @throws IllegalArgumentException if a column is missing or named twice, or a unit does not fit
   */
  static ForceHeading of(List<String> names) {
    int time = column(names, 't');
    int force = column(names, 'f');
    return new ForceHeading(
        time,
        unit(names.get(time), time, Quantity.TIME, Unit.SECOND),
        force,
        unit(names.get(force), force, Quantity.FORCE, Unit.NEWTON),
        names.size());
  }

  int last() {
    return Math.max(time, force);
  }

  private static int column(List<String> names, char initial) {
    int found = -1;
    for (int i = 0; i < names.size(); i++) {
      Matcher column = COLUMN.matcher(names.get(i));
      if (column.matches() && column.group(1).toLowerCase(Locale.ROOT).charAt(0) == initial) {
        if (found >= 0) {
          throw new IllegalArgumentException(
              "columns " + (found + 1) + " and " + (i + 1) + " are both " + name(initial));
        }
        found = i;
      }
    }
    if (found < 0) {
      throw new IllegalArgumentException("no column is called " + name(initial));
    }
    return found;
  }

  private static String name(char initial) {
    return initial == 't' ? "time" : "force";
  }

  private static Unit unit(String name, int column, Quantity quantity, Unit usual) {
    Matcher matcher = COLUMN.matcher(name);
    String spelling = matcher.matches() && matcher.group(2) != null ? matcher.group(2).strip() : "";
    if (spelling.isEmpty()) {
      return usual;
    }
    Unit unit = known(spelling, column);
    if (unit.quantity() != quantity) {
      throw new IllegalArgumentException(
          "column "
              + (column + 1)
              + ": "
              + unit.symbol()
              + " is not a unit of "
              + quantity.label());
    }
    return unit;
  }

  private static Unit known(String spelling, int column) {
    try {
      return Unit.parse(spelling);
    } catch (ReadingException e) {
      throw new IllegalArgumentException(
          "column " + (column + 1) + ": " + e.getMessage().replaceAll("\\.$", ""), e);
    }
  }
}
