package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tests both consoles, and the pipe and terminal of these tests, with a program that repeats what
 * it is told.
 */
class EchoProgramTest {
  private static final Duration PATIENCE = Duration.ofMinutes(5);
  private static final String ESC = "\u001b";
  private static final Pattern COLOUR = Pattern.compile(ESC + "\\[[0-9;]*m");

  private static Pty terminal(Map<String, String> environment, int columns) {
    return Pty.start(Programs.java(EchoProgram.class), environment, columns, columns == 0 ? 0 : 24);
  }

  private static Pty terminal() {
    return terminal(Map.of(), 80);
  }

  /** A program waiting at its prompt, shared by all tests that leave it there. */
  private static Pty waiting;

  private static synchronized Pty waiting() {
    if (waiting == null) {
      waiting = terminal();
      waiting.expect("width 80, a person", PATIENCE).expect("Say: ", PATIENCE);
    }
    return waiting;
  }

  @AfterAll
  static void end() {
    if (waiting != null) {
      waiting.close();
    }
  }

  private static Pipe.Result pipe(Map<String, String> environment, String stdin) {
    return Pipe.run(Programs.java(EchoProgram.class), environment, stdin, PATIENCE);
  }

  @Test
  void a_person_at_a_terminal_types_lines_edits_and_ends_with_ctrl_d() {
    try (Pty pty = terminal()) {
      pty.expect("width 80, a person", PATIENCE).expect("Say: ", PATIENCE);
      pty.enter("24.3\u00a0V at !1 \\ 7 1/2\" Ω")
          .expect("Heard [24.3 V at !1 \\ 7 1/2\" Ω]", PATIENCE);
      pty.expect("Say: ", PATIENCE).enter("190 mn\u007fm").expect("Heard [190 mm]", PATIENCE);
      pty.expect("Say: ", PATIENCE).enter(ESC + "OA").expect("Heard [190 mm]", PATIENCE);
      pty.expect("Say: ", PATIENCE).enter("can\t").expect("Heard [cannot tell]", PATIENCE);
      pty.expect("Say: ", PATIENCE).ctrlD().expect("End of input.", PATIENCE);

      assertThat(pty.waitForExit(PATIENCE)).isZero();
      assertThat(pty.transcript())
          .doesNotContain("Exception", "\tat ", "WARNING: A restricted", "WARNING: A terminally");
      assertThat(pty.raw()).containsPattern(COLOUR);
      assertThatThrownBy(() -> pty.expect("Good night", PATIENCE))
          .as("words that never come are reported with the screen")
          .isInstanceOf(AssertionError.class)
          .hasMessageContaining("The program ended while waiting for")
          .hasMessageContaining("Good night")
          .hasMessageContaining("CAUTION: The gate may move by itself.");
    }
  }

  @Test
  void ctrl_c_at_a_prompt_is_an_answer_of_its_own_and_drops_the_line() {
    Pty pty = waiting();
    pty.type("half a li").expect("half a li", PATIENCE);
    pty.ctrlC().expect("Interrupted.", PATIENCE).expect("Say: ", PATIENCE);
    pty.enter("again").expect("Heard [again]", PATIENCE).expect("Say: ", PATIENCE);

    assertThat(pty.transcript()).doesNotContain("Exception");
  }

  @Test
  void a_line_too_long_or_with_control_characters_is_refused_and_asked_again() {
    Pty pty = waiting();
    pty.enter("x".repeat(2_001));
    pty.expect("That line is longer than 2,000 characters.", PATIENCE);
    // Ctrl-V makes the terminal take the next key literally.
    pty.expect("Say: ", PATIENCE).enter("24\u0016\u00013 V");
    pty.expect("That line has control characters in it.", PATIENCE);
    pty.expect("Say: ", PATIENCE).enter("24.3 V").expect("Heard [24.3 V]", PATIENCE);
    pty.expect("Say: ", PATIENCE);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 120})
  void the_page_is_as_wide_as_the_window(int columns) {
    try (Pty pty = terminal(Map.of(), columns)) {
      pty.expect("width " + columns, PATIENCE).expect("Say: ", PATIENCE);

      assertThat(pty.transcript()).contains("  " + "─".repeat(columns - 2) + "\n");
      pty.killHard();
      assertThat(pty.waitForExit(PATIENCE)).as("how a killed program ends").isEqualTo(128 + 9);
    }
  }

  @Test
  void the_page_follows_the_window() {
    Pty pty = waiting();
    pty.resize(100, 30);
    pty.enter("width").expect("width 100", PATIENCE).expect("Say: ", PATIENCE);
    pty.resize(80, 24);
    pty.enter("width").expect("width 80", PATIENCE).expect("Say: ", PATIENCE);
  }

  @Test
  void a_terminal_that_does_not_tell_its_size_counts_as_80_columns() {
    try (Pty pty = terminal(Map.of(), 0)) {
      pty.expect("width 80", PATIENCE).expect("Say: ", PATIENCE);
      pty.enter("hello").expect("Heard [hello]", PATIENCE);
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void output_into_a_pipe_is_plain_even_with_a_person_at_the_keyboard() {
    String program = "'" + String.join("' '", Programs.java(EchoProgram.class)) + "'";
    try (Pty pty = Pty.start(List.of("sh", "-c", program + " | cat"), Map.of(), 80, 24)) {
      pty.expect("no person", PATIENCE).expect("Say: ", PATIENCE);
      pty.enter("hello").expect("Heard [hello]", PATIENCE);
      pty.expect("Say: ", PATIENCE).ctrlD();

      assertThat(pty.waitForExit(PATIENCE)).isZero();
      assertThat(pty.raw()).doesNotContain(ESC);
    }
  }

  @Test
  void no_color_means_no_colour() {
    try (Pty pty = terminal(Map.of("NO_COLOR", "1"), 80)) {
      pty.expect("CAUTION: The gate may move", PATIENCE).expect("Say: ", PATIENCE);
      pty.enter("hello").expect("Heard [hello]", PATIENCE).expect("Say: ", PATIENCE);

      assertThat(pty.raw()).doesNotContainPattern(COLOUR);
    }
  }

  @Test
  void a_dumb_terminal_gets_no_escape_codes_at_all() {
    try (Pty pty = terminal(Map.of("TERM", "dumb"), 80)) {
      pty.expect("width 80, a person", PATIENCE).expect("Say: ", PATIENCE);
      pty.enter("0.4 Ω").expect("Heard [0.4 Ω]", PATIENCE);
      pty.expect("Say: ", PATIENCE).enter("work").expect("Replaying: 100 %", PATIENCE);
      pty.expect("Say: ", PATIENCE).ctrlD().expect("End of input.", PATIENCE);

      assertThat(pty.waitForExit(PATIENCE)).isZero();
      assertThat(pty.raw()).doesNotContain(ESC);
      assertThat(pty.transcript()).containsOnlyOnce("Say: 0.4 Ω");
    }
  }

  @Test
  void ctrl_c_ends_a_program_on_a_dumb_terminal_quietly() {
    try (Pty pty = terminal(Map.of("TERM", "dumb"), 80)) {
      pty.expect("Say: ", PATIENCE).ctrlC();

      assertThat(pty.waitForExit(PATIENCE)).isEqualTo(128 + 2);
      assertThat(pty.transcript()).doesNotContain("Exception");
    }
  }

  @Test
  void progress_overwrites_itself_on_a_terminal() {
    Pty pty = waiting();
    pty.enter("work").expect("50 % (10 of 20)", PATIENCE).expect("Say: ", PATIENCE);

    assertThat(pty.raw()).contains("\rReplaying: 45 % (9 of 20)\rReplaying: 50 % (10 of 20)\r");
  }

  @Test
  void a_pipe_reads_as_the_conversation_it_was() {
    Pipe.Result result = pipe(Map.of("COLUMNS", "40"), "\ufeff24.3\u00a0V\r\n\nnot now");

    assertThat(result)
        .isEqualTo(
            new Pipe.Result(
                0,
                """
                  CAUTION: The gate may move by itself.
                  width 40, no person
                  ──────────────────────────────────────
                Say: 24.3 V
                  Heard [24.3 V]
                Say:\s
                  Heard []
                Say: not now
                  Heard [not now]
                Say:\s
                  End of input.
                """,
                ""));
  }

  @Test
  void a_pipe_refuses_what_a_terminal_refuses_and_gets_no_progress() {
    Pipe.Result result = pipe(Map.of(), "work\n24\b3 V\n" + "x".repeat(2_001) + "\nok\n");

    assertThat(result.stdout())
        .containsSubsequence("Say: work", "control characters", "longer than 2,000", "Heard [ok]")
        .doesNotContain("Replaying");
    assertThat(result.stderr()).isEmpty();
  }

  @Test
  void a_pipe_that_is_not_utf_8_is_refused_in_words() {
    Pipe.Result result =
        Pipe.run(
            Programs.java(EchoProgram.class),
            Map.of(),
            "20 \u00b0C\n".getBytes(StandardCharsets.ISO_8859_1),
            PATIENCE);

    assertThat(result.stdout()).contains("UTF-8 is expected").doesNotContain("Heard");
  }

  @Test
  void a_machine_without_utf_8_still_reads_it_and_answers_in_ascii() {
    Pipe.Result result = pipe(Map.of("LANG", "C", "LC_ALL", "C"), "0.4 Ω at 20 °C\n");

    assertThat(result.stdout()).contains("Heard [0.4 ohm at 20 degC]", "  ------").isASCII();
  }
}
