package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CauseTableTest {
  private static final SortedMap<String, String> FILES =
      new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
  private static final RuleBase BASE = RuleBase.read(() -> FILES);
  private static final CauseTable TABLE = new CauseTable(BASE, c -> c.area().equals("chain"));

  private static CauseTableEdit edited(String csv) {
    return CauseTableEdit.of(TABLE, csv, FILES, path -> true);
  }

  /** The table with one cell written over. */
  private static String with(String cause, String column, String figure) {
    List<List<String>> cells =
        TABLE.csv().lines().map(l -> List.of(plain(l).split(",", -1))).toList();
    int at = cells.get(0).indexOf(column);
    assertThat(at).as(column).isPositive();
    StringBuilder text = new StringBuilder();
    for (List<String> line : cells) {
      for (int c = 0; c < line.size(); c++) {
        boolean here = line.get(0).equals(cause) && c == at;
        text.append(c == 0 ? "" : ",").append(here ? figure : line.get(c));
      }
      text.append("\r\n");
    }
    return text.toString();
  }

  /** Names may have commas; they are not read back. */
  private static String plain(String line) {
    return line.replaceAll("\"[^\"]*\"", "a name");
  }

  @Test
  void what_comes_back_as_it_went_changes_nothing() {
    CauseTableEdit edit = edited(TABLE.csv());
    assertThat(edit.problems()).isEmpty();
    assertThat(edit.cells()).isEmpty();
    assertThat(edit.files()).isEqualTo(FILES);
  }

  @Test
  void a_table_with_semicolons_and_decimal_commas_reads_the_same() {
    String other =
        TABLE
            .csv()
            .lines()
            .map(l -> plain(l).replace(',', ';').replace('.', ','))
            .toList()
            .toString();
    String text = other.substring(1, other.length() - 1).replace(", ", "\r\n") + "\r\n";
    CauseTableEdit edit = edited("\ufeff" + text);
    assertThat(edit.problems()).isEmpty();
    assertThat(edit.cells()).isEmpty();
  }

  @Test
  void one_cell_changes_one_figure_and_nothing_beside_it() {
    CauseTableEdit edit = edited(with("chain-worn", "effect jerky-pull", "0.62"));
    assertThat(edit.problems()).isEmpty();
    assertThat(edit.cells()).containsExactly("chain-worn, effect jerky-pull: 0.62");
    String file = edit.changed().get(0);
    assertThat(edit.changed()).hasSize(1);
    assertThat(edit.files().get(file))
        .isEqualTo(FILES.get(file).replace("jerky-pull: 0.37", "jerky-pull: 0.62"));
    assertThat(RuleBase.read(edit::files).causes().get("chain-worn").leadsTo())
        .containsEntry("jerky-pull", 0.62);
  }

  @Test
  void a_word_stands_for_its_figure() {
    assertThat(edited(with("chain-worn", "prior", "rarely")).cells())
        .containsExactly("chain-worn, prior: 0.08");
  }

  @Test
  void a_row_that_does_not_add_up_is_told_by_its_cell_and_nothing_is_written() {
    CauseTableEdit edit = edited(with("chain-misaligned", "check chain-sag ordinary", "0.3"));
    assertThat(edit.problems())
        .singleElement()
        .asString()
        .matches("[A-Z]+\\d+: the outcomes of chain-sag of chain-misaligned add up to 0.65. .*");
    assertThat(edit.files()).isEqualTo(FILES);
  }

  @ParameterizedTest
  @CsvSource({
    "chain-worn, prior, 1.5, is not a probability",
    "chain-worn, prior, '', is empty",
    "chain-worn, prior, =1+1, is not a probability",
    "chain-slack, check chain-sag slack, 0.4, no card says anything of",
  })
  void what_cannot_be_is_told_by_its_cell(
      String cause, String column, String figure, String message) {
    CauseTableEdit edit = edited(with(cause, column, figure));
    assertThat(edit.problems())
        .singleElement()
        .asString()
        .matches("[A-Z]+\\d+: .*")
        .contains(message);
    assertThat(edit.files()).isEqualTo(FILES);
  }

  @Test
  void a_line_or_a_column_that_is_not_known_is_told() {
    assertThat(edited("cause,prior\r\nchain-wron,0.1\r\n").problems())
        .singleElement()
        .asString()
        .startsWith("A2: there is no cause \"chain-wron\"")
        .contains("chain-worn");
    assertThat(edited("cause,effect jerky-pul\r\n").problems())
        .singleElement()
        .asString()
        .startsWith("B1: there is no column")
        .contains("effect jerky-pull");
  }

  @Test
  void a_card_of_another_folder_is_not_written_to() {
    CauseTableEdit edit =
        CauseTableEdit.of(TABLE, with("chain-worn", "prior", "0.06"), FILES, path -> false);
    assertThat(edit.problems()).singleElement().asString().contains("is not in this folder");
  }

  @Test
  void a_name_that_a_spreadsheet_would_work_out_goes_out_as_words() {
    SortedMap<String, String> files = new TreeMap<>(FILES);
    files.replaceAll(
        (path, text) ->
            text.replaceFirst(
                "(?m)^name: Chain or sprocket worn$", "name: '=HYPERLINK(\"http://h.example\")'"));
    RuleBase named = RuleBase.read(() -> files);
    assertThat(named.causes().get("chain-worn").name()).startsWith("=");

    assertThat(new CauseTable(named, c -> c.id().equals("chain-worn")).csv())
        .contains("chain-worn,\"'=HYPERLINK(");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "=1+1 ~ '=1+1",
        "+49 170 12 ~ '+49 170 12",
        "@SUM(A1) ~ '@SUM(A1)",
        "-2+3+cmd|' /C x'!A0 ~ '-2+3+cmd|' /C x'!A0",
        "＝1+1 ~ '＝1+1",
        "Ice house;=1+1 ~ Ice house;'=1+1",
        "Ice house\t =1 ~ Ice house\t '=1",
        "North+South ~ North+South",
        "-4 °C ~ -4 °C",
        "+0.5 ~ +0.5",
      })
  void words_of_people_are_no_formula(String said, String cell) {
    assertThat(SheetCell.words(said)).isEqualTo(cell);
  }

  /** Every reading of it took a thousand times as long for a thousand times as much. */
  @Test
  void a_cell_without_end_is_no_chance_and_is_told_in_short() {
    CauseTableEdit edit = edited("cause,prior\r\nchain-worn," + "1".repeat(1_000_000) + "x\r\n");

    assertThat(edit.problems())
        .singleElement()
        .asString()
        .contains("is not a probability")
        .hasSizeLessThan(500);
  }

  @Test
  void a_table_without_end_is_read_no_further_than_any_is_long() {
    assertThat(edited("cause,prior\r\n" + "\r\nx".repeat(6_000)).problems())
        .singleElement()
        .asString()
        .contains("no more lines");
    assertThat(edited("cause,prior\r\n" + "x\r\n".repeat(4_000)).problems()).hasSize(100);
  }

  @Test
  void cells_have_the_names_of_a_spreadsheet() {
    assertThat(CauseTable.cell(0, 1)).isEqualTo("A1");
    assertThat(CauseTable.cell(25, 9)).isEqualTo("Z9");
    assertThat(CauseTable.cell(26, 2)).isEqualTo("AA2");
    assertThat(CauseTable.cell(701, 2)).isEqualTo("ZZ2");
    assertThat(CauseTable.cell(702, 2)).isEqualTo("AAA2");
  }
}
