package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Problem;
import yett.knowledge.Role;
import yett.testing.Shipped;

class CaseFileTest {
  @Test
  void a_case_is_read_from_yaml() {
    CaseFile file =
        read(
            """
            case: slack
            story: >-
              It slaps.
            person: trainee
            site: {opening: 18 ft, batteries: none}
            complaints: [noisy-chain]
            history: [cold-snap]
            answers:
              display-lit: steady
              noise-kind: cannot tell
              held-open: not-now
              chain-sag: [7 1/2 in, slack]
              retest: [fails, cured]
            truth: [chain-slack, batteries-low]
            roots: [chain-slack]
            repairs: [tighten-chain]
            expect: chain-slack
            blind: true
            """);
    assertThat(file.problems()).isEmpty();
    RecordedCase slack = file.cases().get(0);
    assertThat(slack.person()).isEqualTo(Role.TRAINEE);
    assertThat(slack.story()).isEqualTo("It slaps.");
    assertThat(slack.site()).containsEntry("opening", "18 ft").containsEntry("batteries", "none");
    assertThat(slack.answers())
        .containsEntry("display-lit", RepeatedAnswer.always(new Answer.Chosen("steady")))
        .containsEntry("noise-kind", RepeatedAnswer.always(new Answer.CannotTell()))
        .containsEntry("held-open", RepeatedAnswer.always(new Answer.NotNow()))
        .containsEntry(
            "chain-sag",
            new RepeatedAnswer<>(
                List.of(new Answer.Read("7 1/2 in", 190.5), new Answer.Chosen("slack")), true));
    assertThat(slack.retests())
        .contains(
            new RepeatedAnswer<>(
                List.of(new Event.Retested(false), new Event.Retested(true)), true));
    assertThat(slack.truth()).contains(List.of("chain-slack", "batteries-low"));
    assertThat(slack.roots()).containsExactly("chain-slack");
    assertThat(slack.blind()).isTrue();
    assertThat(slack.keptAside()).isFalse();
    assertThat(slack.expect()).contains("chain-slack");
    assertThat(slack.stop()).isEmpty();
  }

  private static String answers(String answers) {
    return "case: a\nperson: technician\nanswers: " + answers + "\n";
  }

  @Test
  void outcomes_that_are_true_at_once_are_a_mapping_and_a_list_is_for_after_repairs() {
    CaseFile file =
        CaseFile.read(
            "quay.case.yaml",
            answers(
                "{noise-kind: {several: [bang, slap]},"
                    + " track-look: [{several: [bent, dirty]}, clean]}"),
            Shipped.BASE);
    assertThat(file.problems()).isEmpty();
    assertThat(file.cases().get(0).answers())
        .containsEntry(
            "noise-kind", RepeatedAnswer.always(new Answer.Chosen("bang", List.of("slap"))))
        .containsEntry(
            "track-look",
            new RepeatedAnswer<>(
                List.of(new Answer.Chosen("bent", List.of("dirty")), new Answer.Chosen("clean")),
                true));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{noise-kind: {several: [usual, bang]}}  | usual and bang cannot be told at once of",
        "{noise-kind: {several: [bang, bang]}}   | bang and bang cannot be told at once of",
        "{noise-kind: {several: [bang, tune]}}   | \"tune\" is not an outcome of \"noise-kind\"",
        "{chain-surface: {several: [dry, iced]}} | Its card does not say \"several: true\".",
        "{noise-kind: {both: [bang, slap]}}      | {several: [one, another]}",
        "{noise-kind: {several: []}}             | {several: [one, another]}",
      })
  void outcomes_that_cannot_be_true_at_once_are_refused(String answers, String why) {
    CaseFile file = CaseFile.read("quay.case.yaml", answers(answers), Shipped.BASE);
    assertThat(text(file)).contains("quay.case.yaml:3:").contains(why);
    assertThat(file.cases()).isEmpty();
  }

  @Test
  void all_that_is_true_is_a_root_unless_the_file_says_otherwise() {
    String two = "case: two\nperson: caller\ntruth: [chain-slack, batteries-low]\n";
    assertThat(read(two).cases().get(0).roots()).containsExactly("chain-slack", "batteries-low");
    assertThat(read("case: none\nperson: caller\n").cases().get(0).roots()).isEmpty();
    assertThat(text(read(two + "roots: [charger-dead]\n")))
        .isEqualTo(
            """
            quay.case.yaml:4:9: there is no true cause "charger-dead"
              Known: batteries-low, chain-slack.
            """);
  }

  @Test
  void a_file_may_hold_several_documents_and_lists() {
    CaseFile file =
        read(
            """
            case: one
            person: caller
            ---
            - {case: two, person: caller}
            - {case: three, person: caller}
            """);
    assertThat(file.cases()).extracting(RecordedCase::name).containsExactly("one", "two", "three");
  }

  @Test
  void json_is_read_with_tabs_and_all() {
    CaseFile file =
        CaseFile.read(
            "quay.json",
            "[\n"
                + "\t{\"case\": \"one\", \"person\": \"caller\", \"answers\": {\"chain-sag\":"
                + " 190}}\n"
                + "]",
            SmallRuleBase.base());
    assertThat(file.problems()).isEmpty();
    assertThat(file.cases().get(0).answers().get("chain-sag").turn(0))
        .isEqualTo(Optional.of(new Answer.Read("190", 190)));
  }

  @Test
  void every_problem_is_told_in_one_go_with_its_place_and_advice() {
    CaseFile file =
        read(
            """
            case: a
            cse: b
            site: {opning: 3, opening: 40 m, batteries: lead}
            complaints: [noisy-chian]
            history: [frost]
            answers:
              chain-sgg: 3
              chain-sag: 12 furlongs
              display-lit: drak
              noise-kind: {slap: 1}
              held-open:
              battery-rest-voltage: 100 V
              charging-voltage: [27 V, 3 mm]
              does-nothing: said
              limits-hold: passed
              retest: maybe
            truth: [chain-slak]
            repairs: [tighten]
            expect: chain-slack
            stop: person-traped
            """);
    assertThat(file.cases()).isEmpty();
    assertThat(text(file))
        .isEqualTo(
            """
            quay.case.yaml:1:1: "person" is missing
              Add a line "person: …".
            quay.case.yaml:2:1: "cse" is not a field here
              Maybe "case". Nearest of 21: case, site, ends, said, stop, told, answers, blind.
            quay.case.yaml:3:8: there is no site question "opning"
              Maybe "opening". Known: batteries, opening.
            quay.case.yaml:3:19: "40 m" is not possible for "opening"
              Possible: 1 m to 20 m.
            quay.case.yaml:3:34: "lead" is not an answer to "batteries"
              Known: agm, none.
            quay.case.yaml:4:14: there is no complaint "noisy-chian"
              Maybe "noisy-chain". Known: does-nothing, noisy-chain, stays-open.
            quay.case.yaml:5:11: there is no history "frost"
              Known: cold-snap.
            quay.case.yaml:7:3: there is no check "chain-sgg"
              Maybe "chain-sag". Known: battery-rest-voltage, chain-sag, charging-voltage, danger-person, display-lit, held-open, limits-hold, mains-at-terminals, noise-kind, retest.
            quay.case.yaml:8:3: "12 furlongs" is not a reading for "chain-sag"
              "furlongs" is not a unit of length; use mm, cm, m, in or ft.
            quay.case.yaml:9:3: "drak" is not an outcome of "display-lit"
              Maybe "dark". Known: dark, steady.
            quay.case.yaml:10:3: "noise-kind" should be one answer, found "{"slap":1}"
              Write a name, a reading with its unit, or {several: [one, another]}.
            quay.case.yaml:11:3: "held-open" has no answer
              Give one, or leave the line out.
            quay.case.yaml:12:3: "100 V" is not possible for "battery-rest-voltage"
              Possible: 0 V to 60 V.
            quay.case.yaml:13:28: "3 mm" is not a reading for "charging-voltage"
              "mm" is a length; this asks for a voltage in V, e.g. 24.3 V.
            quay.case.yaml:14:3: "does-nothing" is a complaint, not a check
              Add it to the list "complaints".
            quay.case.yaml:15:3: "passed" is not an outcome of "limits-hold"
              Maybe "pass". Known: fail, pass.
            quay.case.yaml:16:3: "maybe" is not an answer to "retest"
              Known: cured, fails.
            quay.case.yaml:17:9: there is no cause "chain-slak"
              Maybe "chain-slack". Known: batteries-low, chain-slack, charger-dead, mains-missing, not-in-rule-base, nothing-wrong.
            quay.case.yaml:18:11: there is no repair "tighten"
              Known: charge-batteries, explain-use, replace-charger, restore-mains, tighten-chain.
            quay.case.yaml:20:1: there is no stop "person-traped"
              Maybe "person-trapped". Known: person-trapped.
            """);
  }

  @Test
  void what_is_no_yaml_or_no_case_says_so() {
    assertThat(text(read("# only a comment\n")))
        .isEqualTo(
            """
            quay.case.yaml: there is no case in this file
              A case begins with a line "case: a-name".
            """);
    assertThat(text(read("just words\n")))
        .startsWith("quay.case.yaml:1:1: expected fields with values here, found \"just words\"\n");
    assertThat(text(read("case: a\nperson: [\n")))
        .isEqualTo(
            """
            quay.case.yaml:2:10: this is not YAML: while parsing a flow node, expected the node content, but found 'the end of the file'
              Look for a missing space after a colon, a tab, or a quote left open.
            """);
    assertThat(text(CaseFile.read("quay.json", "{\"case\": \"a\",,}", SmallRuleBase.base())))
        .startsWith("quay.json:1:14: this is not JSON: Unexpected character (',' (code 44))")
        .endsWith("Look for a missing comma or a quote left open.\n");
  }

  @Test
  void the_same_check_or_case_twice_is_a_slip() {
    assertThat(
            text(
                read(
                    """
                    case: a
                    person: caller
                    answers:
                      held-open: meant
                      held-open: meant
                    """)))
        .isEqualTo(
            """
            quay.case.yaml:5:12: "held-open" is here twice
              Delete one of the two.
            """);
    assertThat(text(read("case: a\nperson: caller\n---\ncase: a\nperson: caller\n")))
        .isEqualTo(
            """
            quay.case.yaml:4:1: "a" is in this file twice
              Rename one of them.
            """);
  }

  @Test
  void a_file_that_cannot_be_read_says_so(@TempDir Path folder) throws IOException {
    Path bytes = Files.write(folder.resolve("bytes.case.yaml"), new byte[] {(byte) 0xC3, 0x28});
    assertThat(CaseFile.read(bytes, SmallRuleBase.base()).problems())
        .extracting(Problem::message)
        .containsExactly("this is not text in UTF-8");
    assertThat(CaseFile.read(folder.resolve("gone.yaml"), SmallRuleBase.base()).problems())
        .extracting(Problem::message)
        .containsExactly("there is no such file");
    assertThat(CaseFile.read(folder, SmallRuleBase.base()).problems())
        .extracting(Problem::message)
        .containsExactly("this cannot be read");
  }

  @Test
  void folders_stand_for_the_case_files_in_them(@TempDir Path folder) throws IOException {
    Path inner = Files.createDirectory(folder.resolve("chain"));
    Path b = Files.createFile(inner.resolve("b.case.yaml"));
    Path a = Files.createFile(inner.resolve("a.case.json"));
    Files.createFile(inner.resolve("card.yaml"));
    Path single = folder.resolve("any-name.yaml");
    assertThat(CaseFile.among(List.of(single, folder))).containsExactly(single, a, b);
  }

  private static CaseFile read(String text) {
    return CaseFile.read("quay.case.yaml", text, SmallRuleBase.base());
  }

  private static String text(CaseFile file) {
    return file.problems().stream().map(p -> p + "\n").collect(Collectors.joining());
  }
}
