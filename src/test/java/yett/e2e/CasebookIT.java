package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.testing.PostgresServer;

/** One casebook for many: on a server, and carried by file to one that has no signal. */
class CasebookIT {
  @TempDir private Path directory;

  private Pipe.Result at(Map<String, String> casebook, String stdin, String... words) {
    return Pipe.run(Programs.packaged(words), casebook, stdin, Visitor.PATIENCE);
  }

  private Map<String, String> server(String url, String desk) {
    return Map.of("YETT_HOME", directory.resolve(desk).toString(), "YETT_CASEBOOK", url);
  }

  private Map<String, String> van() {
    return Map.of("YETT_HOME", directory.resolve("van").toString());
  }

  @Test
  void a_case_begun_at_a_desk_goes_on_at_another_travels_to_a_van_and_is_found_and_forgotten() {
    String url = PostgresServer.shared().newCasebook();
    Path file = directory.resolve("cases.jsonl");

    Pipe.Result begun =
        at(server(url, "desk"), "0\nnote squeals in rain\nsave\n", "diagnose", "Fish dock");
    assertThat(begun.stdout()).contains("Saved. Go on with: resume ");
    Pipe.Result resumed =
        at(
            server(url, "other desk"),
            """
            cases people 1 --caller "Ina Teal" --phone "555 0107"
            cases find squeals --site "fish dock" --state open
            cases figures
            cases export 1 --to "%s"
            cases forget --person "ina teal"
            cases people 1
            quit
            """
                .formatted(file));
    assertThat(resumed.stderr()).isEmpty();
    assertThat(resumed.stdout())
        .containsSubsequence(
            "Ina Teal, 555 0107",
            "fish-dock",
            "1 case.",
            "Where, and how many in a year",
            "holds 1 case, without what is known of people.",
            "1 entry on people forgotten in 1 case.",
            "Nothing is known of the people");
    assertThat(file).content().contains("squeals in rain").doesNotContain("Teal");

    for (String outcome : new String[] {"1 new, 0 continued", "0 new, 0 continued"}) {
      assertThat(at(van(), "", "cases", "import", file.toString()).stdout()).contains(outcome);
    }
    at(van(), "note rust under the cover\nsave\n", "resume", "1");
    at(server(url, "desk"), "note it is the ferry side\nsave\n", "resume", "1");
    Path back = directory.resolve("back.jsonl");
    at(van(), "", "cases", "export", "1", "--to", back.toString());

    Pipe.Result conflict = at(server(url, "desk"), "", "cases", "import", back.toString());

    assertThat(conflict.exitCode()).isEqualTo(65);
    assertThat(conflict.stdout())
        .containsSubsequence("Conflict: case", "Here:", "ferry side", "In the file", "rust under");
  }

  @Test
  void a_server_that_does_not_answer_or_let_in_is_told_without_a_password() {
    String url = PostgresServer.shared().url("postgres");

    Pipe.Result away =
        at(
            server("jdbc:postgresql://127.0.0.1:1/yett?user=desk&password=hemlock", "desk"),
            "",
            "cases");
    Pipe.Result wrong =
        at(server(url.replaceAll("password=.*", "password=hemlock"), "desk"), "", "cases");

    assertThat(away.stderr()).contains("the server does not answer").doesNotContain("hemlock");
    assertThat(wrong.stderr())
        .contains("does not take this user and password")
        .doesNotContain("hemlock", "\tat ");
    assertThat(away.exitCode()).isEqualTo(74);
    assertThat(away.stdout()).isEmpty();
    assertThat(Files.exists(directory.resolve("desk").resolve("casebook.db"))).isFalse();
  }
}
