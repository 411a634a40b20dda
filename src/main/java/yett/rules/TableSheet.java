package yett.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.drools.template.parser.DataListener;

/** The cells of one sheet of a table, received from Drools' table readers. */
final class TableSheet implements DataListener {
  private static final int MOST_ROWS = 2_000;
  private static final int MOST_COLUMNS = 60;

  private final String name;
  private final SortedMap<Integer, SortedMap<Integer, String>> rows = new TreeMap<>();
  private boolean tooLarge;

  /**
   * @param name empty where there is only one sheet
   */
  TableSheet(String name) {
    this.name = name;
  }

  @Override
  public void startSheet(String sheet) {}

  @Override
  public void finishSheet() {}

  @Override
  public void newRow(int row, int columns) {}

  @Override
  public void newCell(int row, int column, String value, int mergedFrom) {
    if (row >= MOST_ROWS || column >= MOST_COLUMNS) {
      tooLarge = true;
    } else if (value != null && !value.isBlank()) {
      rows.computeIfAbsent(row, r -> new TreeMap<>()).put(column, value.strip());
    }
  }

  /** Whether it has more rows or columns than people write. */
  boolean tooLarge() {
    return tooLarge;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Positions of the rows that are not empty, the heading first. */
  List<Integer> rows() {
    return new ArrayList<>(rows.keySet());
  }

  /** Positions of the cells in a row that are not empty. */
  List<Integer> columns(int row) {
    return new ArrayList<>(rows.getOrDefault(row, new TreeMap<>()).keySet());
  }

  Optional<String> cell(int row, int column) {
    return Optional.ofNullable(rows.getOrDefault(row, new TreeMap<>()).get(column));
  }

  /** The position of a cell as people find it: {@code sheet "Ranges", cell B7}. */
  String place(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int c = column; c >= 0; c = c / 26 - 1) {
      letters.insert(0, (char) ('A' + c % 26));
    }
    return (name.isEmpty() ? "" : "sheet \"" + name + "\", ") + "cell " + letters + (row + 1);
  }
}
