package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** Two copies of an add-on under different folders, as somebody compares two of its versions. */
class CardsApartTest {
  private static final String ROW = "a cantilever has no track to fill";
  private static final String TABLE = "rule,if support,odds,because,source\n";
  private static final String GRAVEL =
      ",cantilever,end-stop-struck 0.9,gravel,considered judgement\n";

  @TempDir private Path parent;

  private RuleBase copy(String folder, String card, String table) throws IOException {
    Path copy = Files.createDirectories(parent.resolve(folder));
    Files.writeString(copy.resolve("add-on.yaml"), "add-on: quay\nname: Quay\n" + card);
    if (!table.isEmpty()) {
      Files.writeString(
          Files.createDirectories(copy.resolve("leaf")).resolve("odds.table.csv"), table);
    }
    return RuleBase.read(
        KnowledgeSource.layered(KnowledgeSource.folder(Path.of("knowledge")), List.of(copy)));
  }

  @Test
  void a_file_that_both_copies_have_is_not_told_twice() throws IOException {
    RuleBase one = copy("quay-1.0", "", TABLE + "gravel at the quay" + GRAVEL);
    RuleBase other = copy("quay", "", TABLE + "gravel at the quay" + GRAVEL);
    assertThat(CardsApart.words(one, other)).isEmpty();
    ChangedCards changed = new ChangedCards(one, other);
    assertThat(changed.added()).isEmpty();
    assertThat(changed.gone()).isEmpty();
    assertThat(changed.altered()).isEmpty();
  }

  @Test
  void a_case_of_the_add_on_is_the_same_case_in_both_copies() throws IOException {
    String text = "case: dry\nperson: technician\ntruth: [chain-slack]\n";
    List<String> files = new ArrayList<>();
    for (String folder : List.of("quay-1.0", "quay")) {
      RuleBase base = copy(folder, "", "");
      Files.writeString(parent.resolve(folder).resolve("dry.case.yaml"), text);
      KnowledgeSource source =
          KnowledgeSource.layered(
              KnowledgeSource.folder(Path.of("knowledge")), List.of(parent.resolve(folder)));
      CasesBeside beside = CasesBeside.of(source.files(), base, "quay/");
      assertThat(beside.problems()).isEmpty();
      beside.byAddOn(base).cases().forEach(c -> files.add(c.file()));
    }
    assertThat(files).containsExactly("quay/dry.case.yaml", "quay/dry.case.yaml");
  }

  @Test
  void a_table_and_what_is_switched_off_are_told() throws IOException {
    RuleBase without = copy("quay-1.0", "", "");
    RuleBase with = copy("quay", "switches-off: {rule: [\"" + ROW + "\"]}\n", TABLE + ROW + GRAVEL);
    assertThat(CardsApart.words(without, with))
        .containsExactly(
            "tables only in the second: quay/leaf/odds.table.csv",
            "switched off only in the second: rule " + ROW);
    assertThat(new ChangedCards(with, without).switchedOn()).containsExactly("rule " + ROW);
  }
}
