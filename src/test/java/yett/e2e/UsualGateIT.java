package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tests that the usual answers can be set for a computer, and that written cases do not depend on
 * them.
 */
class UsualGateIT {
  @TempDir private Path home;

  private Pipe.Result yett(String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), "", words);
  }

  @Test
  void a_gate_of_which_nothing_was_told_is_as_most_gates_here_are() {
    Pipe.Result chosen = yett("gates", "usual", "supply-volts=120", "marker=none");
    assertThat(chosen.exitCode()).isZero();
    assertThat(chosen.stdout()).contains("mains 120 V", "120 V (chosen here)");

    yett("gates", "add", "Ice house", "opening=4 m");
    assertThat(yett("gates", "show", "Ice house").stdout())
        .contains("assumed as usual: on a track, 350 kg, mains 120 V");

    assertThat(yett("gates", "usual", "as-shipped").stdout()).contains("mains 230 V");
    assertThat(yett("gates", "show", "Ice house").stdout()).contains("mains 230 V");
  }

  @Test
  void a_written_case_means_the_usual_gate_of_the_rule_base() {
    yett("gates", "usual", "chain-size=50", "opening=9 m");
    Pipe.Result replayed = yett("replay", "--json", "knowledge/chain/chain-slack.case.yaml");

    assertThat(replayed.stdout()).contains("\"question\":\"chain-size\",\"answer\":\"40\"");
  }

  @Test
  void what_is_no_answer_is_refused_and_nothing_is_kept() {
    Pipe.Result refused = yett("gates", "usual", "marker=none", "supply-volts=231");

    assertThat(refused.exitCode()).isNotZero();
    assertThat(refused.stderr()).contains("\"231\" is not an answer");
    assertThat(yett("gates", "usual").stdout()).contains("as in the rule base");
  }
}
