package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;

/** The worked example of docs/add-ons.md, as whoever follows the page would try it. */
class AddOnTest {
  private static final Path EXAMPLE = Path.of("docs/examples/harrow-quay");

  private static KnowledgeSource source;
  private static RuleBase base;

  @BeforeAll
  static void read() {
    source =
        KnowledgeSource.layered(KnowledgeSource.folder(Path.of("knowledge")), List.of(EXAMPLE));
    base = RuleBase.read(source);
  }

  @Test
  void its_case_finds_its_cause_and_repairs_it() {
    CasesBeside beside = CasesBeside.of(source.files(), base, EXAMPLE.toString());
    assertThat(beside.problems()).isEmpty();
    assertThat(beside.cases()).extracting(RecordedCase::name).hasSize(1);
    Trial trial =
        Trial.run(
            Expertise.of(base, Path.of("target/rule-cache")), beside.cases(), Map.of(), () -> {});
    Account northMole = trial.accounts().get(0);
    assertThat(northMole.right()).contains(true);
    assertThat(northMole.repairs()).containsExactly("rinse-beam");
    assertThat(northMole.unsafe()).isEmpty();
  }

  @Test
  void cases_of_what_is_switched_off_are_left_out_and_said_to_be() {
    CasesBeside beside = CasesBeside.of(source.files(), base, "weather/");
    assertThat(beside.problems()).isEmpty();
    assertThat(beside.skipped())
        .hasSize(1)
        .allMatch(n -> n.endsWith(" (weather/stories.case.yaml)"));
    assertThat(beside.cases())
        .as("the other cases of the file still run")
        .extracting(RecordedCase::file)
        .contains("weather/stories.case.yaml");
  }
}
