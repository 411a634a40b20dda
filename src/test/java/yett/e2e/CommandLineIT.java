package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tests what a script gets: the exit status, and messages on standard error. */
class CommandLineIT {
  @TempDir private static Path home;

  private static Pipe.Result run(String stdin, String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), stdin, words);
  }

  @Test
  void a_script_sees_the_exit_status_and_both_outputs_of_the_process() {
    Pipe.Result result =
        Pipe.run(
            Programs.packaged("knowledge", "chek"),
            Map.of("YETT_HOME", home.toString()),
            "",
            Visitor.PATIENCE);

    assertThat(result.exitCode()).isEqualTo(64);
    assertThat(result.stderr())
        .startsWith("There is no command \"knowledge chek\". Maybe \"knowledge check\".");
    assertThat(result.stdout()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "diagnos            | 64 | There is no command \"diagnos\". Maybe \"diagnose\"",
        "cases --opne       | 64 | \"cases\" has no option --opne. Usage: cases [--open]",
        "diagnose --as      | 64 | --as needs a value.",
        "diagnose --as king | 64 | \"king\" is not a known role.",
        "cases all          | 64 | There is no command \"cases all\".",
        "knowledge chek     | 64 | There is no command \"knowledge chek\". Maybe \"knowledge check\".",
        "resume             | 64 | No case is open. Begin one with: diagnose.",
        "record             | 64 | Usage: record CASE",
        "replay             | 64 | Usage: replay FILE...",
        "help flurble       | 64 | There is no command \"flurble\".",
      })
  void a_command_line_that_cannot_be_understood(String words, int status, String message) {
    Pipe.Result result = run("", words.split(" "));

    assertThat(result.exitCode()).as(result.stderr()).isEqualTo(status);
    assertThat(result.stderr()).startsWith(message).doesNotContain("Exception", "\tat ");
    assertThat(result.stdout()).isEmpty();
  }

  @Test
  void what_a_trainer_can_do_and_name_is_listed() {
    assertThat(run("", "knowledge").stdout())
        .contains("knowledge check:", "knowledge find:", "knowledge review:");
    assertThat(run("", "knowledge", "find", "bracket", "loose").stdout())
        .containsPattern("chain-bracket-loose: +Chain bracket loose")
        .matches("(?s).*Causes\\R(?:(?!chain-slack).)*Also by what is meant\\R.*");
    assertThat(run("", "knowledge", "questions").stdout())
        .containsPattern("Answers: checks\\R(?s:.*)chain-sag: +How far");
    assertThat(run("", "help", "knowledge", "new", "cause").stdout())
        .contains("also:", "CHECK:", "repair-needs:", "story:");
    assertThat(run("", "knowledge", "find", "wingnut").exitCode()).isEqualTo(66);
  }

  @Test
  void a_case_that_is_not_there() {
    for (String command : new String[] {"resume", "record"}) {
      Pipe.Result result = run("", command, "2026-0815");

      assertThat(result.exitCode()).isNotZero();
      assertThat(result.stdout()).isEmpty();
      assertThat(result.stderr())
          .startsWith("There is no case \"2026-0815\".")
          .doesNotContain("Exception", "\tat ");
    }
  }

  @Test
  void a_case_file_that_is_not_there() {
    Pipe.Result result = run("", "replay", "nowhere.case.yaml");

    assertThat(result.exitCode()).isNotZero();
    assertThat(result.stderr()).contains("nowhere.case.yaml").doesNotContain("Exception", "\tat ");
  }

  @Test
  void without_a_command_they_are_asked_for_one_after_the_other() {
    Pipe.Result result = run("flurble\nhelp\nhelp resume\ncases\nquit\n");

    assertThat(result.stdout())
        .containsSubsequence(
            "Type diagnose to begin",
            "diagnose",
            "resume",
            "Usage: resume [CASE]",
            "The casebook has no cases yet.");
    assertThat(result.stderr()).startsWith("There is no command \"flurble\".");
  }
}
