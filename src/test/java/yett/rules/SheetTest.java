package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yett.knowledge.CauseTable;
import yett.knowledge.CauseTableEdit;
import yett.knowledge.KnowledgeSource;
import yett.testing.Shipped;

/** A table goes to a workbook and comes back as it was. */
class SheetTest {
  @Test
  void words_figures_and_empty_cells_come_back() throws IOException {
    List<List<String>> rows =
        List.of(List.of("cause", "a", "b"), List.of("chain-slack", "0.065", "often"), List.of("x"));
    assertThat(Sheet.rows(Sheet.workbook("Causes", rows))).isEqualTo(rows);
    List<List<String>> gap = List.of(List.of("a", "", "1"));
    assertThat(Sheet.rows(Sheet.workbook("Causes", gap))).isEqualTo(gap);
  }

  @Test
  void the_causes_of_the_chain_say_the_same_in_a_workbook() throws IOException {
    CauseTable table = new CauseTable(Shipped.BASE, c -> c.area().equals("chain"));
    String back = CauseTable.csv(Sheet.rows(Sheet.workbook("Causes", table.rows())));
    var files = new TreeMap<>(KnowledgeSource.folder(java.nio.file.Path.of("knowledge")).files());
    CauseTableEdit edit = CauseTableEdit.of(table, back, files, name -> true);
    assertThat(edit.problems()).isEmpty();
    assertThat(edit.changed()).isEmpty();
  }

  @Test
  void what_is_no_workbook_is_refused() {
    assertThatThrownBy(() -> Sheet.rows(new byte[] {1, 2, 3})).isInstanceOf(IOException.class);
  }
}
