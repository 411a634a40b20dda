package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.casebook.SiteRecord;
import yett.console.Layout;
import yett.console.PlainConsole;

/** Which gate somebody means. */
class GateNamesTest {
  private static final List<String> KNOWN = List.of("North+South", "Fish dock", "😀");

  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();

  private Optional<String> meant(String name, String typed) {
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    var console =
        new PlainConsole(
            new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
            out,
            out,
            new Layout(100, false, true),
            false);
    var sites = KNOWN.stream().map(n -> new SiteRecord(n, n, "{}", Instant.EPOCH)).toList();
    return new GateNames(console, sites).meant(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"North+South", "Fish dock", "😀", "!!!", "Ferry", "Fish docks"})
  void a_name_to_the_letter_or_like_no_other_is_not_asked_about(String name) {
    assertThat(meant(name, "")).contains(name);
    assertThat(screen.size()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "North/South, 1, North+South",
    "North/South, 2, North/South",
    "fish dock, 1, Fish dock",
    "FISH-DOCK, 2, FISH-DOCK",
  })
  void a_name_that_is_nearly_anothers_is_asked_about(String name, String typed, String meant) {
    assertThat(meant(name, "0\n3\nx\n" + typed + "\n")).contains(meant);
    assertThat(screen.toString(StandardCharsets.UTF_8))
        .contains("with a similar name", "another gate, called " + name)
        .contains("Type a number from 1 to 2.");
  }

  @Test
  void whoever_leaves_means_none() {
    assertThat(meant("North South", "")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"help", "HELP", "?", "quit", "save"})
  void a_word_to_the_program_is_no_gates_name(String word) {
    assertThat(GateNames.isName(word)).isFalse();
    assertThat(GateNames.refusal(word)).contains("\"" + word + "\"", "not the name of a gate");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Help Street", "X", "Back", "Note"})
  void a_gate_may_be_called_nearly_so(String name) {
    assertThat(GateNames.isName(name)).isTrue();
  }
}
