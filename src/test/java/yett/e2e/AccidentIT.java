package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests a case after an accident, and the settings for what a firm's people may do. */
class AccidentIT {
  @TempDir private Path home;

  private String run(String typed, String... words) {
    Pipe.Result result = InProcess.run(Map.of("YETT_HOME", home.toString()), typed, words);
    assertThat(result.stderr()).isEmpty();
    assertThat(result.exitCode()).isZero();
    return result.stdout().replaceAll("\\s+", " ");
  }

  @Test
  void a_case_of_somebody_hurt_stays_open_until_the_scene_is_released() {
    assertThat(run("1\ndone\nleave\n", "diagnose", "Fish dock"))
        .contains("The case stays open for the inquiry", "resume");
    assertThat(run("", "cases", "--open")).contains("Fish dock", "Somebody is struck or trapped");

    assertThat(run("0\n1\ndone\nleave\n", "resume", "1"))
        .contains(
            "was left open for an inquiry",
            "The scene of the accident has not been released",
            "kept for the inquiry")
        .doesNotContain("Entries that nobody could have made", "The gate as installed");

    assertThat(run("0\n0\n", "resume", "1"))
        .contains("was left open for an inquiry", "The gate as installed")
        .doesNotContain("Entries that nobody could have made");
    assertThat(run("", "cases", "verify")).doesNotContain("1 case is damaged");
  }

  @Test
  void back_after_resume_takes_back_what_was_done_and_not_the_look_that_resume_asks_for() {
    run("1\ndone\nleave\n", "diagnose", "Fish dock");
    assertThat(run("back\n", "resume", "1"))
        .contains("Taken back")
        .doesNotContain("Taken back: another look");
  }

  @Test
  void what_a_firm_allows_stands_in_a_file_of_its_own_and_a_slip_in_it_is_told()
      throws IOException {
    assertThat(run("", "knowledge", "show", "replace-supply-fuse"))
        .contains("for an electrician, because it is work on mains terminals");
    Path file = Files.writeString(home.resolve("firm.yaml"), "mains-parts: {terminal: nobody}\n");

    Pipe.Result slip =
        InProcess.run(Map.of("YETT_HOME", home.toString()), "", "diagnose", "Fish dock");
    assertThat(slip.exitCode()).isEqualTo(65);
    assertThat(slip.stderr()).contains("firm.yaml:1", "technician");

    Files.writeString(file, "mains-parts: {terminal: technician}\n");
    assertThat(run("", "knowledge", "show", "replace-supply-fuse"))
        .contains("for a technician, because it is work on mains terminals");
  }
}
