package yett.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.shell.core.command.CommandRegistry;
import yett.casebook.CaseId;
import yett.console.Completer.Completion;

/** What the Tab key offers at the prompt for commands. */
class CommandCompletionTest {
  @TempDir private Path home;

  private Workplace place;
  private CommandRegistry commands;

  @BeforeEach
  void a_desk() {
    place = new Workplace(Map.of("YETT_HOME", home.toString()), Clock.systemUTC());
    commands = new AllCommands(place, new Failures(place.output(), place.mistakes())).registry();
  }

  @AfterEach
  void left() {
    place.close();
  }

  private List<String> after(String typed) {
    return new CommandCompletion(commands).after(typed).stream().map(Completion::line).toList();
  }

  @Test
  void names_of_commands_word_by_word() {
    assertThat(after("cas")).contains("cases", "cases show").doesNotContain("call");
    assertThat(after("knowledge a")).containsExactly("knowledge anomalies");
    assertThat(after("help knowledge an")).containsExactly("help knowledge anomalies");
    assertThat(after("help calculate duty-h")).containsExactly("help calculate duty-heat");
    assertThat(after("flurble ")).isEmpty();
  }

  @Test
  void options_and_what_may_stand_behind_them() {
    assertThat(after("cases --")).containsExactly("cases --open");
    assertThat(after("diagnose Slipway --as tr")).containsExactly("diagnose Slipway --as trainee");
    assertThat(after("practice --level "))
        .containsExactly("practice --level easy", "practice --level fair", "practice --level hard");
    assertThat(after("cases find --cause chain-sl"))
        .containsExactly("cases find --cause chain-slack");
  }

  @Test
  void cases_and_gates_of_the_casebook() {
    CaseId first = place.desk().casebook().newCase("Slipway 2", Instant.EPOCH);
    assertThat(after("resume ")).contains("resume " + first);
    assertThat(after("cases show 1")).containsExactly("cases show " + first);
    assertThat(after("cases find --site Sl")).isEqualTo(gatesAfter("cases find --site "));
  }

  private List<String> gatesAfter(String head) {
    return place.desk().casebook().sites().stream()
        .map(s -> head + (s.id().contains(" ") ? "\"" + s.id() + "\"" : s.id()))
        .toList();
  }

  @Test
  void cards_by_their_ids() {
    assertThat(after("knowledge show chain-sl")).contains("knowledge show chain-slack");
  }

  @Test
  void names_of_files_with_blanks_in_quotes() throws IOException {
    Path folder = Files.createDirectory(home.resolve("two words"));
    Files.createFile(folder.resolve("a.case.yaml"));
    assertThat(after("replay " + home + "/tw")).containsExactly("replay \"" + home + "/two words/");
    assertThat(after("replay \"" + home + "/two words/a"))
        .containsExactly("replay \"" + home + "/two words/a.case.yaml\"");
    assertThat(after("replay " + home + "/nowhere/x")).isEmpty();
  }
}
