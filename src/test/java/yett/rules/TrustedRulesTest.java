package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class TrustedRulesTest {
  private static final String SHIPPED = "package yett.rules\n";
  private static final String OWN = "package yett.rules.own\n";

  @TempDir private Path home;

  private TrustedRules trusted() {
    return new TrustedRules(home.resolve("settings/trusted-rules.txt"), List.of(SHIPPED));
  }

  private static TreeMap<String, String> rules(String own) {
    return new TreeMap<>(Map.of("rules/core.drl", SHIPPED, "rules/own.drl", own));
  }

  @Test
  void only_what_came_with_the_program_runs_unasked() {
    assertThat(trusted().untrusted(rules(OWN))).containsExactly("rules/own.drl");
    assertThat(trusted().untrusted(new TreeMap<>(Map.of("elsewhere.drl", SHIPPED)))).isEmpty();
  }

  @Test
  void what_was_trusted_is_remembered_until_it_changes() {
    trusted().trust(rules(OWN));
    assertThat(trusted().untrusted(rules(OWN))).isEmpty();
    assertThat(trusted().untrusted(rules(OWN + " "))).containsExactly("rules/own.drl");
    trusted().trust(rules(OWN + " "));
    assertThat(trusted().untrusted(rules(OWN))).as("both versions were trusted").isEmpty();
  }

  @Test
  void what_was_trusted_last_can_be_held_against_what_is_there_now() throws IOException {
    assertThat(trusted().lastTrusted("rules/own.drl")).isEmpty();
    trusted().trust(rules(OWN));
    TrustedRules second = trusted();
    second.trust(rules(OWN + "// more\n"));
    assertThat(second.lastTrusted("rules/own.drl")).contains(OWN + "// more\n");
    assertThat(trusted().lastTrusted("rules/own.drl")).contains(OWN + "// more\n");
    assertThat(trusted().lastTrusted("rules/core.drl")).isEmpty();

    try (Stream<Path> texts = Files.list(home.resolve("settings/trusted-rules"))) {
      for (Path text : texts.toList()) {
        Files.writeString(text, "somebody else's");
      }
    }
    assertThat(trusted().lastTrusted("rules/own.drl")).as("not what was trusted").isEmpty();
  }

  @Test
  void a_name_cannot_smuggle_in_a_line() throws IOException {
    TrustedRules trusted = trusted();
    String other = "package yett.rules.other\n";
    trusted.trust(new TreeMap<>(Map.of("x\nother.drl", OWN)));
    assertThat(Files.readAllLines(home.resolve("settings/trusted-rules.txt"))).hasSize(1);
    assertThat(trusted().untrusted(rules(other))).containsExactly("rules/own.drl");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void a_list_that_others_can_write_to_is_not_used() throws IOException {
    trusted().trust(rules(OWN));
    Path list = home.resolve("settings/trusted-rules.txt");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(list)))
        .isEqualTo("rw-------");
    for (Path open : List.of(list, list.getParent())) {
      var before = Files.getPosixFilePermissions(open);
      Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rwxrwxrwx"));
      assertThatThrownBy(this::trusted).hasMessageContaining("can be written by others");
      Files.setPosixFilePermissions(open, before);
    }
    assertThat(trusted().untrusted(rules(OWN))).isEmpty();
  }
}
