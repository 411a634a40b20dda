package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tests calculations on the command line, in a pipe and at a terminal. */
class CalculateIT {
  @TempDir private static Path home;

  private static Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString(), "COLUMNS", "80"), stdin, words);
  }

  @Test
  void in_one_line_of_the_command_line() {
    Pipe.Result result =
        run(
            "",
            "calculate",
            "feeder-drop",
            "supply=24 V",
            "current=15 A",
            "length=50 ft",
            "size=12 AWG");

    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(result.stdout())
        .doesNotContain("\u001b")
        .contains("2.97 V", "12.38 %", "At the gate", "too thin or too long", "NEC");
    assertThat(result.stdout().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_recorded_force_is_drawn_in_a_pipe() throws IOException {
    Path curve = home.resolve("wharf gate.csv");
    StringBuilder record = new StringBuilder("Time [ms];Force [N]\n0;0\n50;950,5\n");
    for (int ms = 54; ms <= 5600; ms += 4) {
      record.append(ms).append(';').append(ms < 1600 ? "180,5" : "30").append('\n');
    }
    Files.writeString(curve, record);

    Pipe.Result result =
        run("", "calculate", "obstruction-force", "curve=" + curve, "zone=closing-gap");

    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(result.stdout())
        .doesNotContain("\u001b")
        .containsSubsequence("over the limits", "limit 400 |", "Take it out of use", "The peak of");
    assertThat(result.stdout().lines()).allMatch(line -> line.length() <= 80);

    Files.writeString(curve, "time,force\n0,0\n0.1,1o0\n");
    Pipe.Result refused =
        run("", "calculate", "obstruction-force", "curve=" + curve, "zone=closing-gap");

    assertThat(refused.exitCode()).isEqualTo(64);
    assertThat(refused.stderr())
        .contains("wharf gate.csv, line 3, column 2 (force): \"1o0\" is no number")
        .doesNotContain("Exception");
  }

  @Test
  void at_the_programs_own_prompt_without_a_terminal() {
    Pipe.Result result =
        run(
            "calculate feeder-drop supply=24 V current=15 A +- 0.5 A length=50 ft size=\"12 AWG\"\n"
                + "calculate feeder-drop\ncalculate feeder-drop supply=3 ohm\ncalculate fedder-drop\nquit\n");

    assertThat(result.stdout()).contains("2.97 V, u = 0.057 V");
    assertThat(result.stderr())
        .contains(
            "feeder-drop needs supply, current, length, size.",
            "supply: \"ohm\" is a resistance",
            "Maybe \"feeder-drop\"")
        .doesNotContain("Exception", "\tat ");
  }

  @Test
  void what_is_wrong_is_json_too_for_who_asked_for_json() {
    Pipe.Result result = run("", "calculate", "feeder-drop", "supply=24 V", "size=10", "--json");

    assertThat(result.exitCode()).isEqualTo(64);
    assertThat(result.stderr()).isEmpty();
    assertThat(result.stdout())
        .startsWith("{\"calculation\":\"feeder-drop\",\"problems\":[{\"input\":\"size\",")
        .contains("10 AWG or 10 mm2");

    Pipe.Result prose = run("", "calculate", "feeder-drop", "supply=24 V", "size=10");

    assertThat(prose.exitCode()).isEqualTo(64);
    assertThat(prose.stdout()).isEmpty();
    assertThat(prose.stderr()).startsWith("size: \"10\" may be 10 AWG or 10 mm2");
  }

  @ParameterizedTest
  @CsvSource({"--bogus,no option --bogus", "--knowledge,--knowledge needs"})
  void a_command_line_that_means_nothing_is_told_as_json_too(String option, String told) {
    Pipe.Result result = run("", "calculate", "feeder-drop", "--json", option);

    assertThat(result.exitCode()).isEqualTo(64);
    assertThat(result.stderr()).isEmpty();
    assertThat(result.stdout()).startsWith("{\"problems\":[{\"text\":").contains(told);

    Pipe.Result prose = run("", "calculate", "feeder-drop", option);
    assertThat(prose.stdout()).isEmpty();
    assertThat(prose.stderr()).contains(told);
  }

  @Test
  void at_a_terminal_each_input_is_asked_for() {
    try (Pty pty =
        Pty.start(
            Programs.packaged("calculate", "feeder-drop"),
            Map.of("YETT_HOME", home.toString()),
            80,
            24)) {
      pty.expect("supply> ", Visitor.PATIENCE);
      pty.enter("24");
      pty.expect("current> ", Visitor.PATIENCE);
      pty.enter("fifteen");
      pty.expect("There is no number", Visitor.PATIENCE);
      pty.enter("15 A");
      pty.expect("length> ", Visitor.PATIENCE);
      pty.enter("back");
      pty.enter("15 A");
      pty.expect("length> ", Visitor.PATIENCE);
      pty.enter("50 ft");
      pty.expect("size> ", Visitor.PATIENCE);
      pty.enter("12 awg");
      pty.enter("");
      pty.enter("");
      pty.enter("");
      pty.enter("");
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(pty.transcript()).contains("2.97 V", "75 degC, the usual");
    }
  }
}
