package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests a whole case by typing, from the call to the record. */
class InterviewIT {
  private static final Story SLACK_CHAIN = Story.of("slack-chain-after-winter");

  @TempDir private Path home;

  @Test
  void a_case_survives_the_power_cut_and_is_closed_with_every_proof() {
    List<String> before;
    try (Visitor visitor = Visitor.at(SLACK_CHAIN, home, "diagnose", "Chandler's gate")) {
      visitor.until(Screen.Kind.SET_UP);
      visitor.answer();
      visitor.answer();
      before = visitor.asked();
      visitor.pty().type("half an answ");
      visitor.pty().killHard();
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isEqualTo(128 + 9);
    }
    assertThat(before).hasSizeGreaterThan(6);

    try (Visitor visitor = Visitor.at(SLACK_CHAIN, home, "resume")) {
      assertThat(visitor.screen().text()).contains("Chandler's gate");
      visitor.until(Screen.Kind.REPAIR);
      assertThat(visitor.asked())
          .as("asked after the power cut, answered before it")
          .doesNotContainAnyElementsOf(withoutSetUps(before));
      visitor.until(Screen.Kind.CLOSE);
      assertThat(visitor.screen().text()).contains("The gate has passed every proof it needs.");
      assertThat(visitor.asked())
          .contains(
              "REPAIR", "RETEST", "reversal-closing", "reversal-opening", "manual-release-works");
      visitor.pty().enter("close");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript())
          .contains("Closed. The record: record ")
          .doesNotContain("Exception", "\tat ", "WARNING: A restricted", "WARNING: A terminally");
    }

    assertThat(command("cases").stdout()).contains("Chandler's gate", "Chain too");
    assertThat(command("cases", "--open").stdout()).contains("no case");
    assertThat(command("cases", "show", "1").stdout())
        .contains("Chandler's gate", "Closed: ", "Chain too slack: where this figure comes from");
    assertThat(command("record", "1").stdout())
        .startsWith("# ")
        .contains("Chandler's gate", "Chain too slack")
        .containsIgnoringCase("does the closing leaf reverse when it meets the test obstruction");
    assertThat(command("record", "1", "--hand-over").stdout()).contains("Chandler's gate");
  }

  @Test
  void recorded_cases_are_replayed_without_a_person() {
    Pipe.Result result = run("replay", "knowledge/chain/chain-slack.case.yaml");
    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(result.stdout()).contains("slack-chain-after-winter", "cases: ");
    assertThat(run("replay", "knowledge/chain/chain-slack.case.yaml", "--json").stdout().lines())
        .isNotEmpty()
        .allMatch(line -> line.startsWith("{") && line.endsWith("}"));
  }

  /**
   * The prompts without set-ups and details of the gate. After resuming, a set-up may be entered
   * again with its cautions, and a step may depend on another detail.
   */
  private static List<String> withoutSetUps(List<String> asked) {
    List<String> others = new ArrayList<>(asked);
    others.removeAll(
        List.of(
            Screen.Kind.SET_UP.name(),
            Screen.Kind.CAUTIONS.name(),
            Screen.Kind.SITE_NEEDED.name()));
    return others;
  }

  private Pipe.Result run(String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), "", words);
  }

  private Pipe.Result command(String... words) {
    Pipe.Result result = run(words);
    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(result.stderr()).isEmpty();
    return result;
  }
}
