package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.testing.PostgresServer;

/** Tests what a person is told if a shared casebook cannot be opened. */
class CasebookIT {
  @TempDir private Path directory;

  private Pipe.Result at(Map<String, String> casebook, String stdin, String... words) {
    return Pipe.run(Programs.packaged(words), casebook, stdin, Visitor.PATIENCE);
  }

  private Map<String, String> server(String url, String desk) {
    return Map.of("YETT_HOME", directory.resolve(desk).toString(), "YETT_CASEBOOK", url);
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
        .contains("does not accept this user and password")
        .doesNotContain("hemlock", "\tat ");
    assertThat(away.exitCode()).isEqualTo(74);
    assertThat(away.stdout()).isEmpty();
    assertThat(Files.exists(directory.resolve("desk").resolve("casebook.db"))).isFalse();
  }
}
