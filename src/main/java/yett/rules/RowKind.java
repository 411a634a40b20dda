package yett.rules;

import java.util.List;
import java.util.Optional;

/** What the rows of a table say, which shows in the titles of its columns. */
interface RowKind {
  List<RowKind> ALL = List.of(new RangeRows(), new OddsRows(), new ExclusionRows());

  /** Columns that every table of this kind has, and no other; the first says what a row is on. */
  List<String> columns();

  /** Further columns that it may have. */
  default List<String> possible() {
    return List.of();
  }

  /** Whether a row must say at which gates it speaks. */
  default boolean needsGrounds() {
    return true;
  }

  /** What a row says; nothing if a cell is wrong, or speaks of a card that is switched off. */
  Optional<Row> row(RowCells cells, Grounds grounds, Reason reason);
}
