package yett.rules;

import java.util.List;
import java.util.Optional;

/** A kind of rows, recognised by the titles of the table's columns. */
interface RowKind {
  List<RowKind> ALL = List.of(new RangeRows(), new OddsRows(), new ExclusionRows());

  /**
   * Columns that every table of this kind has, and no table of another kind; the first holds the
   * subject of a row.
   */
  List<String> columns();

  /** Further columns that are allowed. */
  default List<String> possible() {
    return List.of();
  }

  /** Whether a row must have conditions on the site. */
  default boolean needsGrounds() {
    return true;
  }

  /** Reads a row; empty if a cell has a problem or refers to a card that is switched off. */
  Optional<Row> row(RowCells cells, Grounds grounds, Reason reason);
}
