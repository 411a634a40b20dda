package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests an exercise that is begun at a terminal, left in the middle, and finished in a pipe. */
class PracticeIT {
  @TempDir private Path home;

  private Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString(), "COLUMNS", "80"), stdin, words);
  }

  @Test
  void an_exercise_is_begun_left_and_ended() {
    String file = Path.of("knowledge/chain/chain-slack.case.yaml").toString();
    String[] words = {"practice", file, "--case", "slack-chain-after-winter", "--seed", "1"};
    try (Pty pty =
        Pty.start(
            Programs.packaged(words),
            Map.of("YETT_HOME", home.toString(), "NO_COLOR", "1"),
            80,
            24)) {
      pty.expect("Minute 0> ", Visitor.PATIENCE);
      pty.enter("hwo far does the chian hang");
      pty.expect("Which of these?", Visitor.PATIENCE);
      pty.enter("");
      pty.expect("it counts as a safety error", Visitor.PATIENCE);
      pty.enter("xyzzy");
      pty.expect("Nothing here is called \"xyzzy\"", Visitor.PATIENCE);
      pty.enter("r999");
      pty.expect("There is no r999", Visitor.PATIENCE);
      pty.enter("dangers");
      pty.expect("no danger to people", Visitor.PATIENCE);
      pty.enter("noise-kind");
      pty.expect("the chain slaps or rattles.", Visitor.PATIENCE);
      pty.expect("Minute 3> ", Visitor.PATIENCE);
      pty.ctrlD();
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(pty.transcript())
          .contains("over the winter", "Kept. Go on with it: practice")
          .doesNotContain("Exception");
      assertThat(pty.raw()).doesNotContain("\u001b[3", "\u001b[9");
    }

    Pipe.Result ended = run("again\n\nso far\nhand over\nyes\n", "practice");
    assertThat(ended.exitCode()).as(ended.stderr()).isZero();
    assertThat(ended.stdout())
        .doesNotContain("\u001b")
        .containsSubsequence(
            "An exercise was left",
            "Press Enter, or type new.",
            "Noise kind:",
            "How it went",
            "WARNING: Safety error: \"How far",
            "Still there at the end: Chain too slack",
            "The plan:",
            "Hand over",
            "The plan's own way:",
            "The same again: practice");
    assertThat(ended.stdout().lines()).allMatch(line -> line.length() <= 80);

    assertThat(run("", "practice", "progress").stdout())
        .contains("exercises: 1", "chain:", "0 of 1 put right", "safety errors: 1");
    Pipe.Result refused = run("", "practice", "--area", "chian");
    assertThat(refused.exitCode()).isEqualTo(64);
    assertThat(refused.stderr()).contains("no area \"chian\"", "Maybe \"chain\"");
  }
}
