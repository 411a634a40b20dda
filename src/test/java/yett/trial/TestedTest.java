package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.KnowledgeException;
import yett.trial.Difference.Turn;

class TestedTest {
  private static final String SLAP = "chain-slack: {usual: 0.2, slap: 0.8}";

  @TempDir private Path folder;

  @Test
  void without_an_accepted_run_the_files_say_what_is_right() {
    SmallFolder small = new SmallFolder(folder);
    Tested first = small.test("");
    assertThat(first.accepted()).isFalse();
    assertThat(first.fresh()).containsExactly("slack", "dark-display");
    assertThat(first.wrong()).isEmpty();
    assertThat(first.good()).isTrue();

    small.change("harbour.case.yaml", "truth: [chain-slack]", "expect: charger-dead");
    Tested second = small.test("");
    assertThat(second.wrong())
        .hasSize(1)
        .allMatch(w -> w.matches("slack \\(chain-slack \\d+ %\\)"));
    assertThat(second.good()).isFalse();
  }

  @Test
  void the_same_rule_base_does_as_accepted() {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    Tested again = small.test("");
    assertThat(again.accepted()).isTrue();
    assertThat(again.changed()).isEmpty();
    assertThat(again.fresh()).isEmpty();
    assertThat(again.gone()).isEmpty();
    assertThat(again.good()).isTrue();
  }

  @Test
  void a_changed_likelihood_is_told_with_the_evidence_that_moved() {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    small.change("checks.yaml", SLAP, "chain-slack: {usual: 0.9, slap: 0.1}");

    Tested changed = small.test("");

    assertThat(changed.good()).isFalse();
    assertThat(changed.changed()).extracting(Difference::name).contains("slack");
    Difference slack =
        changed.changed().stream().filter(d -> d.name().equals("slack")).findFirst().orElseThrow();
    assertThat(slack.words())
        .anyMatch(w -> w.matches("step \\d+: was .+, is .+ \\(\\d+ steps before, \\d+ now\\)"))
        .anyMatch(w -> w.startsWith("evidence for chain-slack: "));

    changed.accept().run();
    assertThat(small.test("").good()).isTrue();
  }

  @Test
  void a_case_that_went_wrong_comes_first() {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    small
        .change("causes.yaml", "prior: 0.15", "prior: 0.0001")
        .change("checks.yaml", SLAP, "chain-slack: {usual: 0.95, slap: 0.05}")
        .change("harbour.case.yaml", "truth: [chain-slack]", "expect: charger-dead");
    Difference first = small.test("").changed().get(0);
    assertThat(first.name()).isEqualTo("slack");
    assertThat(first.words())
        .anyMatch(w -> w.matches("evidence for chain-slack: at the outset, was .+ dB, is .+"));
    assertThat(first.turn()).isEqualTo(Turn.WORSE);
  }

  @Test
  void new_and_gone_cases_are_named() {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    small.change("harbour.case.yaml", "case: slack", "case: slack-again");
    Tested tested = small.test("");
    assertThat(tested.fresh()).containsExactly("slack-again");
    assertThat(tested.gone()).containsExactly("slack");
    assertThat(tested.good()).isFalse();
  }

  @Test
  void accepting_a_part_keeps_the_rest() {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    Tested part = small.test("slack");
    assertThat(part.gone()).isEmpty();
    part.accept().run();
    assertThat(small.test("").good()).isTrue();
  }

  @Test
  void the_accepted_run_is_one_line_a_case_in_a_fixed_order() throws IOException {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    byte[] once = Files.readAllBytes(folder.resolve(AcceptedRun.FILE));
    small.test("").accept().run();
    assertThat(folder.resolve(AcceptedRun.FILE)).hasBinaryContent(once);
    assertThat(new String(once, java.nio.charset.StandardCharsets.UTF_8).lines())
        .hasSize(2)
        .allMatch(line -> line.startsWith("{\"case\":\""));
    try (var files = Files.list(folder)) {
      assertThat(files).noneMatch(f -> f.toString().endsWith(".part"));
    }
  }

  @Test
  void a_damaged_accepted_run_is_told_with_its_line() throws IOException {
    SmallFolder small = new SmallFolder(folder);
    small.test("").accept().run();
    Path file = folder.resolve(AcceptedRun.FILE);
    Files.writeString(file, Files.readString(file) + "<<<<<<< a merge\n");
    assertThatThrownBy(() -> small.test(""))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining(AcceptedRun.FILE + ":3:1: this line is no case of an accepted run");
  }
}
