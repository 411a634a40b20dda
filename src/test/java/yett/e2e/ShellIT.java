package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests the prompt for commands at a terminal. Ctrl-P is the up arrow of every terminal. */
class ShellIT {
  @TempDir private Path home;

  private Pty start() {
    return Pty.start(Programs.packaged(), Map.of("YETT_HOME", home.toString()), 80, 24)
        .expect("yett> ", Visitor.PATIENCE);
  }

  @Test
  void tab_completes_and_commands_but_no_answers_and_no_names_are_kept() throws IOException {
    try (Pty pty = start()) {
      pty.type("cases --\t").expect("--open", Visitor.PATIENCE).type("\r");
      pty.expect("has no cases yet", Visitor.PATIENCE).expect("yett> ", Visitor.PATIENCE);
      pty.enter("diagnose").expect("Name of the gate> ", Visitor.PATIENCE).enter("Slipway");
      pty.expect("or the numbers that apply> ", Visitor.PATIENCE).enter("save");
      pty.expect("yett> ", Visitor.PATIENCE).enter("cases people 1 --caller Ines");
      pty.expect("Ines", Visitor.PATIENCE).expect("yett> ", Visitor.PATIENCE).enter("flurble");
      pty.expect("There is no command", Visitor.PATIENCE).expect("yett> ", Visitor.PATIENCE);
      pty.enter("quit");
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isEqualTo(64);
    }
    assertThat(Files.readAllLines(home.resolve("commands.history")))
        .containsExactly("cases --open", "diagnose", "flurble");

    try (Pty pty = start()) {
      pty.type("\u0010").expect("flurble", Visitor.PATIENCE);
      pty.type("\u0010").expect("diagnose", Visitor.PATIENCE).ctrlC();
      pty.expect("yett> ", Visitor.PATIENCE).ctrlD();
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
    }
  }
}
