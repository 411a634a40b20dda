package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tests that output cannot control a terminal or get lost unnoticed, and that files are readable by
 * their owner only.
 */
class DoorsIT {
  private static final String HOSTILE = "\u001b[2J\u009b31m\u202e";

  @TempDir private Path directory;

  @Test
  void no_message_that_quotes_a_file_steers_the_terminal() throws IOException {
    Path file =
        Files.writeString(directory.resolve("cases.jsonl"), "{\"kind\":\"" + HOSTILE + "\"}");
    Pipe.Result result = run("cases", "import", file.toString());
    assertThat(result.exitCode()).isNotZero();
    assertThat(result.stderr())
        .contains("cases.jsonl")
        .doesNotContain("\u001b", "\u009b", "\u202e");
    assertThat(result.stdout()).doesNotContain("\u001b", "\u009b", "\u202e");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void whichever_command_comes_first_what_is_kept_is_for_its_owner_alone() throws IOException {
    Pipe.Result exercise = run("practice", "--seed", "7");
    assertThat(exercise.stderr()).isEmpty();
    run("cases");
    List<String> open = new ArrayList<>();
    try (Stream<Path> all = Files.walk(directory.resolve("home"))) {
      for (Path path : all.toList()) {
        String rights = PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
        if (!rights.endsWith("------")) {
          open.add(rights + " " + path);
        }
      }
    }
    assertThat(directory.resolve("home").resolve("casebook.db")).exists();
    assertThat(open).isEmpty();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void a_folder_that_others_can_open_is_told() throws IOException {
    Path home = Files.createDirectory(directory.resolve("home"));
    Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(run("cases").stderr()).contains("chmod 700 " + home);
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void output_that_cannot_be_written_is_a_failure() throws Exception {
    ProcessBuilder builder = new ProcessBuilder(Programs.packaged("calculate"));
    builder.environment().putAll(Programs.environment());
    builder.environment().put("YETT_HOME", directory.resolve("home").toString());
    Process process = builder.redirectOutput(Path.of("/dev/full").toFile()).start();
    process.getOutputStream().close();
    assertThat(new String(process.getErrorStream().readAllBytes()))
        .contains("Not all output could be written");
    assertThat(process.waitFor()).isEqualTo(74);
  }

  private Pipe.Result run(String... arguments) {
    return Pipe.run(
        Programs.packaged(arguments),
        Map.of("YETT_HOME", directory.resolve("home").toString()),
        "",
        Visitor.PATIENCE);
  }
}
