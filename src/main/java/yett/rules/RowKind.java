package yett.rules;

import java.util.List;
import java.util.Optional;

/** What the rows of a table say, which shows in the titles of its columns. */
interface RowKind {
  List<RowKind> ALL = List.of(new RangeRows(), new OddsRows(), new ExclusionRows());

  /** The columns that only tables of this kind have, and all of them; the first tells the row. */
  List<String> columns();

  /** Columns that may be left out. */
  default List<String> possible() {
    return List.of();
  }

  /** Whether a row must say at which gates it speaks. */
  default boolean needsGrounds() {
    return true;
  }

  /** What a row says; nothing if a cell is wrong, or speaks of a card that is switched off. */
  Optional<Row> row(Cells cells, Grounds grounds, Reason reason);
}
