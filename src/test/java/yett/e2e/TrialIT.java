package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests how a trainer tries a change: trust, test, accept, compare, cover. */
class TrialIT {
  private static final String CASE =
      """
      case: slack
      person: technician
      site: {opening: 6 m}
      complaints: [noisy-chain]
      answers: {danger-person: nobody, noise-kind: slap, retest: cured, limits-hold: pass}
      truth: [chain-slack]
      """;

  @TempDir private Path home;
  @TempDir private Path folder;
  @TempDir private Path other;

  @BeforeEach
  void small_rule_base() throws IOException {
    for (Path to : new Path[] {folder, other}) {
      try (Stream<Path> files = Files.list(Path.of("src/test/resources/small-rule-base"))) {
        for (Path file : files.toList()) {
          Files.copy(file, to.resolve(file.getFileName()));
        }
      }
      Files.copy(Path.of("knowledge/rules/core.drl"), to.resolve("core.drl"));
      Files.writeString(to.resolve("harbour.case.yaml"), CASE);
    }
  }

  private Pipe.Result run(String... words) {
    return InProcess.run(Map.of("YETT_HOME", home.toString()), "", words);
  }

  private static void change(Path file, String words, String others) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(words);
    Files.writeString(file, text.replace(words, others));
  }

  @Test
  void from_the_first_question_of_trust_to_the_release() throws IOException {
    String path = folder.toString();
    Pipe.Result refused = run("knowledge", "test", path);
    assertThat(refused.exitCode()).isEqualTo(77);
    assertThat(refused.stderr())
        .contains("small.drl", "knowledge trust FOLDER")
        .doesNotContain("core.drl", "Exception");
    try (Pty pty = terminal("knowledge", "test", path)) {
      pty.expect("small.drl", Visitor.PATIENCE).expect("to stop: ", Visitor.PATIENCE);
      pty.enter("trust").expect("1 case: ", Visitor.PATIENCE);
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
    }

    Pipe.Result first = run("knowledge", "test", path, "--accept");
    assertThat(first.exitCode()).as(first.stderr()).isZero();
    assertThat(first.stdout()).contains("1 case: ", "Accepted; kept in");
    assertThat(first.stderr()).isEmpty();

    change(folder.resolve("causes.yaml"), "prior: 0.15", "prior: 0.002");
    Pipe.Result changed = run("knowledge", "test", path);
    assertThat(changed.exitCode()).isEqualTo(1);
    assertThat(changed.stdout())
        .contains("slack (harbour.case.yaml)", "evidence for chain-slack: at the outset");

    Pipe.Result compared = run("knowledge", "compare", other.toString(), path, "--sums");
    assertThat(compared.exitCode()).as(compared.stderr()).isZero();
    assertThat(compared.stdout()).contains("First", "Second", "Another path").doesNotContain("dB");

    Pipe.Result noTerminal = run("knowledge", path);
    assertThat(noTerminal.exitCode()).isEqualTo(64);
    assertThat(noTerminal.stderr()).contains("needs a terminal").doesNotContain("no command");

    Pipe.Result covered =
        run("knowledge", "cover", "--knowledge", path, folder.resolve("harbour.case.yaml") + "");
    assertThat(covered.exitCode()).as(covered.stderr()).isZero();
    assertThat(covered.stdout())
        .containsSubsequence("Causes that come first in no case", "Numbers that deserve care");

    change(folder.resolve("small.drl"), "end", "end ");
    try (Pty pty = terminal("knowledge", "test", path)) {
      pty.expect("new here or were changed: small.drl", Visitor.PATIENCE);
      pty.expect("to stop: ", Visitor.PATIENCE).ctrlD();
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isEqualTo(77);
    }
    assertThat(run("knowledge", "trust", path).stdout()).contains("Trusted from now on: small.drl");
  }

  private Pty terminal(String... words) {
    return Pty.start(Programs.packaged(words), Map.of("YETT_HOME", home.toString()), 80, 24);
  }
}
