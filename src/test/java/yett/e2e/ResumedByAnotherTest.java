package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A case that somebody else goes on with: who answers is shown, and nobody inherits a role. */
class ResumedByAnotherTest {
  @TempDir private Path home;

  private String run(String typed, String... words) {
    Pipe.Result result = InProcess.run(Map.of("YETT_HOME", home.toString()), typed, words);
    assertThat(result.stderr()).isEmpty();
    assertThat(result.exitCode()).isZero();
    return result.stdout().replaceAll("\\s+", " ");
  }

  @Test
  void nobody_is_an_electrician_because_the_last_one_was() {
    assertThat(run("0\nsave\n", "diagnose", "Fish dock", "--as", "electrician"))
        .contains("· Fish dock · as an electrician");
    assertThat(run("\n0\nsave\n", "resume"))
        .contains(
            "An electrician answered last.",
            "Are you an electrician?",
            "· Fish dock · as a technician",
            "An electrician answered until now: look for each danger yourself.");
    assertThat(run("save\n", "resume"))
        .contains("· as a technician")
        .doesNotContain("Are you an electrician?");
  }

  @Test
  void an_electrician_says_so_or_names_the_role() {
    run("0\nsave\n", "diagnose", "Fish dock", "--as", "electrician");
    assertThat(run("yes\nsave\n", "resume"))
        .contains("· Fish dock · as an electrician")
        .doesNotContain("look for each danger yourself");
    assertThat(run("save\n", "resume", "--as", "electrician"))
        .contains("· as an electrician")
        .doesNotContain("Are you an electrician?");
    assertThat(run("save\n", "resume")).doesNotContain("· as a");
  }

  @Test
  void a_hand_over_takes_its_reason_on_its_line_and_shows_it_to_whoever_comes_next() {
    assertThat(
            run(
                "0\n\n1\n0\nhand over charger dead, no spare on the van\n\ndone\n\ndone\nclose\n",
                "diagnose",
                "Fish dock"))
        .contains("Hand over Charger dead, no spare on the van.");
    assertThat(run("save\n", "resume", "1", "--as", "electrician"))
        .contains("Handed over because: charger dead, no spare on the van.");
  }
}
