package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlainConsoleTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private Console console(InputStream in) {
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    return new PlainConsole(in, stream, stream, new Layout(80, true, true), false);
  }

  private static InputStream utf8(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void what_follows_a_line_is_left_for_the_next_reader() throws IOException {
    InputStream in = utf8("0.4 Ω\nthe next line\n");

    assertThat(console(in).ask("? ")).isEqualTo(new Reply.Line("0.4 Ω"));
    assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).isEqualTo("the next line\n");
  }

  @Test
  void the_end_stays_the_end() {
    Console console = console(utf8(""));

    assertThat(console.ask("? ")).isEqualTo(new Reply.EndOfInput());
    assertThat(console.ask("? ")).isEqualTo(new Reply.EndOfInput());
  }

  @Test
  void a_runaway_line_is_refused_and_the_next_one_answers() {
    Console console = console(utf8("x".repeat(1_000_000) + "\nok\n"));

    assertThat(console.ask("? ")).isEqualTo(new Reply.Line("ok"));
  }

  @Test
  void a_prompt_cannot_steer_the_terminal_and_colour_is_never_written() {
    Console console = console(utf8("ok\n"));

    console.show(Block.signal(SignalWord.DANGER, "Stand clear."));
    console.ask("Reading\u001b[2J: ");

    assertThat(out.toString(StandardCharsets.UTF_8))
        .isEqualTo("  DANGER:  Stand clear.\nReading[2J: ok\n");
  }

  @Test
  void a_job_of_no_steps_reports_nothing() {
    try (Progress progress = console(utf8("")).start("Replaying", 0)) {
      progress.step();
    }

    assertThat(out.size()).isZero();
  }

  @Test
  void colour_needs_a_terminal_that_is_not_dumb_and_no_wish_against_it() {
    assertThat(Consoles.hasColour(Map.of("TERM", "xterm"))).isTrue();
    assertThat(Consoles.hasColour(Map.of("TERM", "xterm", "NO_COLOR", ""))).isTrue();
    assertThat(Consoles.hasColour(Map.of("TERM", "xterm", "NO_COLOR", "0"))).isFalse();
    assertThat(Consoles.hasColour(Map.of("TERM", "dumb"))).isFalse();
  }
}
