package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.course.Expertise;
import yett.knowledge.CardFile;
import yett.knowledge.CardFile.Document;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class SchemasTest {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private static final RuleBase SHIPPED = Shipped.BASE;

  @ParameterizedTest
  @ValueSource(
      strings = {
        ReplayerTest.SLACK_THAT_IS_MEASURED,
        "case: silent\nperson: caller\n",
        "case: hurt\nperson: caller\nanswers: {danger-person: hurt-or-trapped}\n",
        "case: two\nperson: technician\ncomplaints: [does-nothing]\nanswers: {retest: fails}\n",
        "case: odd\nperson: technician\ncomplaints: [noisy-chain]\n"
            + "answers: {display-lit: dark, noise-kind: slap, retest: cured, limits-hold: fail}\n"
      })
  void results_have_the_form_of_their_schema(String text) throws IOException {
    Replayed replayed = ReplayerTest.run(text);
    assertThat(errors("replay-result", ReplayJson.line(replayed))).isEmpty();
  }

  private static final String TWO_NOISES =
      "{\"case\": \"noises\", \"person\": \"technician\", \"complaints\": [\"noisy-chain\"],"
          + " \"told\": [\"noise-kind\"],"
          + " \"answers\": {\"noise-kind\": [{\"several\": [\"bang\", \"slap\"]}, \"usual\"]}}";

  @Test
  void outcomes_that_are_true_at_once_are_in_both_schemas() throws IOException {
    assertThat(errors("replay-case", TWO_NOISES)).isEmpty();
    assertThat(errors("replay-case", TWO_NOISES.replace("several", "both"))).isNotEmpty();
    CaseFile file = CaseFile.read("quay.case.json", TWO_NOISES, SHIPPED);
    String line = ReplayJson.line(new Replayer(Shipped.QUICK).run(file.cases().get(0)));
    assertThat(errors("replay-result", line)).isEmpty();
    assertThat(line)
        .contains("\"answer\":\"slap + bang\"")
        .contains(
            "\"meaning\":{\"outcome\":\"bang\",\"also\":[\"slap\"],\"words\":"
                + "\"the chain slaps or rattles, and also a bang when it reaches the end\"");
  }

  @Test
  void a_result_says_the_same_when_the_case_is_run_again() {
    assertThat(ReplayJson.line(ReplayerTest.run(ReplayerTest.SLACK_THAT_IS_MEASURED)))
        .isEqualTo(ReplayJson.line(ReplayerTest.run(ReplayerTest.SLACK_THAT_IS_MEASURED)));
  }

  @Test
  void keys_stand_in_their_order_and_the_moment_is_left_out() {
    String line = ReplayJson.line(ReplayerTest.run("case: silent\nperson: caller\n"));
    assertThat(line)
        .startsWith(
            "{\"case\":\"silent\",\"file\":\"quay.case.yaml\",\"story\":\"\",\"rule-base\":")
        .doesNotContain("\"moment\"", "\n");
  }

  @Test
  void a_result_tells_what_was_seen_of_the_effects_of_the_first_cause() throws IOException {
    Expertise expertise = SmallRuleBase.withEffects();
    CaseFile file =
        CaseFile.read(
            "quay.case.yaml",
            """
            case: gravel
            person: technician
            complaints: [slow]
            truth: [track-dirty]
            others: usual
            """,
            expertise.base());
    assertThat(file.problems()).isEmpty();
    String line = ReplayJson.line(new Replayer(expertise).run(file.cases().get(0)));
    assertThat(errors("replay-result", line)).isEmpty();
    assertThat(line)
        .contains(
            "\"effects\":[{\"effect\":\"more-force\",\"chance\":0.9,"
                + "\"seen\":[{\"check\":\"slow\",\"outcome\":\"said\"}],\"ordinary\":[]}]");
  }

  @Test
  void the_problems_of_a_file_have_the_form_of_the_schema() throws IOException {
    CaseFile bad = CaseFile.read("quay.case.yaml", "case: a\n", SmallRuleBase.base());
    String lines = ReplayJson.lines(new FileReplay(bad.name(), List.of(), bad.problems()));
    assertThat(errors("replay-result", lines)).isEmpty();
  }

  @Test
  void the_example_of_the_page_runs() throws IOException {
    Matcher example =
        Pattern.compile("(?s)```yaml\n(.*?)```")
            .matcher(Files.readString(Path.of("docs/replay.md")));
    assertThat(example.find()).isTrue();
    assertThat(caseErrors("page.yaml", example.group(1))).isEmpty();
    assertThat(ReplayerTest.run(example.group(1)).judged().cause()).contains(true);
    assertThat(CaseFile.read("page.yaml", example.group(1), SHIPPED).problems()).isEmpty();
  }

  static List<Path> shippedCases() {
    return CaseFile.among(List.of(Path.of("knowledge")));
  }

  @ParameterizedTest
  @MethodSource("shippedCases")
  void the_cases_beside_the_cards_can_be_read(Path path) throws IOException {
    CaseFile file = CaseFile.read(path, SHIPPED);
    assertThat(file.problems()).isEmpty();
    assertThat(file.cases()).isNotEmpty();
    assertThat(caseErrors(path.toString(), Files.readString(path))).isEmpty();
  }

  @Test
  void there_are_cases_beside_the_cards() {
    assertThat(shippedCases()).hasSizeGreaterThan(20);
  }

  static Stream<String> badCases() {
    return Stream.of(
        "person: caller",
        "case: a",
        "case: a\nperson: neighbour",
        "case: a\nperson: caller\ncse: b",
        "case: a\nperson: caller\nanswers: {held-open: []}",
        "case: a\nperson: caller\nanswers: {held-open: {meant: 1}}",
        "case: a\nperson: caller\nanswers: {retest: maybe}",
        "case: a\nperson: caller\nsite: [opening]",
        "[]",
        "just words");
  }

  @ParameterizedTest
  @MethodSource("badCases")
  void what_the_reader_refuses_the_schema_refuses(String text) throws IOException {
    assertThat(CaseFile.read("quay.yaml", text, SmallRuleBase.base()).problems()).isNotEmpty();
    assertThat(caseErrors("quay.yaml", text)).isNotEmpty();
  }

  private static List<String> caseErrors(String name, String text) throws IOException {
    List<String> errors = new ArrayList<>();
    for (Document document : CardFile.read(name, text, new ArrayList<>())) {
      errors.addAll(errors("replay-case", document.root().toString()));
    }
    return errors;
  }

  private static List<String> errors(String name, String json) throws IOException {
    Schema schema =
        REGISTRY.getSchema(Files.readString(Path.of("shared/" + name + ".schema.json")));
    return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
  }
}
