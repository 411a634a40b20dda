package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;

class PromptOnTerminalTest {
  /** A line editor takes a percent sign in a prompt for an instruction. */
  @Test
  void a_percent_sign_is_shown() throws IOException {
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    ByteArrayInputStream typed = new ByteArrayInputStream("2\n".getBytes(StandardCharsets.UTF_8));
    try (DumbTerminal terminal =
        new DumbTerminal("test", "dumb", typed, screen, StandardCharsets.UTF_8)) {
      TerminalConsole console =
          new TerminalConsole(
              terminal, new PrintStream(screen, true, StandardCharsets.UTF_8), false);
      assertThat(console.ask("Answer in %, or Enter to leave it> ", List.of()))
          .isEqualTo(new Reply.Line("2"));
    }
    assertThat(screen.toString(StandardCharsets.UTF_8)).contains("Answer in %, or Enter");
  }
}
