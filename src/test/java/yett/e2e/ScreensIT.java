package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests the same case on every kind of screen, and without one. */
class ScreensIT {
  private static final String ESC = "\u001b";
  private static final Pattern COLOUR = Pattern.compile(ESC + "\\[[0-9;:]*m");
  private static final Story STORY = Story.of("slack-chain-after-winter");

  @TempDir private static Path home;

  /** Shows every kind of block: lists, rows, bars, signal words. */
  private static Pty tour(Map<String, String> environment, int columns) {
    try (Visitor visitor = Visitor.at(STORY, home, environment, columns, "diagnose", "Slipway")) {
      visitor.until(Screen.Kind.CHECK);
      visitor.say("why");
      visitor.say("belief");
      visitor.say("help");
      visitor.until(Screen.Kind.SET_UP);
      visitor.pty().enter("save");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript())
          .contains("Saved. Go on with: resume ")
          .doesNotContain("Exception", "\tat ", "WARNING: A restricted", "WARNING: A terminally");
      return visitor.pty();
    }
  }

  private static void assertFills(Pty pty, int columns) {
    assertThat(pty.transcript().lines()).allMatch(line -> line.length() <= columns);
    assertThat(pty.transcript().lines()).anyMatch(line -> line.length() > columns - 10);
  }

  @Test
  void no_line_is_longer_than_the_window() {
    Pty pty = tour(Map.of(), 80);

    assertThat(pty.raw()).containsPattern(COLOUR);
    assertFills(pty, 80);
  }

  @Test
  void a_narrow_window_breaks_lines_at_40_columns() {
    Pty pty = tour(Map.of(), 40);

    assertThat(pty.transcript().lines().filter(line -> !line.contains("> ")))
        .allMatch(line -> line.length() <= 40);
  }

  @Test
  void no_color_means_no_colour_codes_at_all_in_a_wide_window_either() {
    Pty pty = tour(Map.of("NO_COLOR", "1"), 120);

    assertThat(pty.raw()).doesNotContainPattern(COLOUR);
    assertFills(pty, 120);
  }

  @Test
  void a_dumb_terminal_gets_no_escape_codes() {
    Pty pty = tour(Map.of("TERM", "dumb"), 80);

    assertThat(pty.raw()).doesNotContain(ESC);
    assertThat(pty.transcript().lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 120})
  void without_a_terminal_the_output_is_the_conversation(int columns) {
    Pipe.Result result =
        InProcess.run(
            Map.of("YETT_HOME", home.toString(), "COLUMNS", Integer.toString(columns)),
            "0\n\nnoisy-chain\n0\nwhy\nbelief\nhelp\nunknown\n1\nsave\n",
            "diagnose",
            "Slipway");

    assertThat(result.exitCode()).isZero();
    assertThat(result.stderr()).isEmpty();
    assertThat(result.stdout())
        .doesNotContain(ESC, "\r", "Exception")
        .contains("Why this question", "Probable causes", "At every prompt", "Saved.");
    assertThat(result.stdout().lines().filter(line -> !line.contains("> ")))
        .allMatch(line -> line.length() <= columns)
        .anyMatch(line -> line.length() > columns - 10);
  }
}
