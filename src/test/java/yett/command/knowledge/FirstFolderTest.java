package yett.command.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.command.common.ExitException;
import yett.command.common.UsageException;
import yett.console.Layout;
import yett.console.PlainConsole;

/** The first card of a trainer, in a folder that is not an add-on yet. */
class FirstFolderTest {
  @TempDir private Path parent;

  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();

  private PlainConsole console(boolean interactive, String typed) {
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    return new PlainConsole(
        new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
        out,
        out,
        new Layout(100, false, true),
        interactive);
  }

  private String written(Path folder) throws IOException {
    return Files.readString(folder.resolve("add-on.yaml"));
  }

  @Test
  void a_folder_that_is_not_there_becomes_an_add_on() throws IOException {
    Path folder = parent.resolve("Harrow Quay");
    new FirstFolder(folder).ready(console(true, "The \"Quay\": estate\n"));
    assertThat(written(folder))
        .isEqualTo("add-on: harrow-quay\nname: \"The \\\"Quay\\\": estate\"\n");
    assertThat(screen.toString(StandardCharsets.UTF_8)).contains("has no cards yet", "Written: ");
  }

  @Test
  void enter_takes_the_name_of_the_folder() throws IOException {
    Path folder = Files.createDirectory(parent.resolve("quay"));
    Files.writeString(folder.resolve(".new-cause.draft"), "id=x\n"); // no card
    new FirstFolder(folder).ready(console(true, "\n"));
    assertThat(written(folder)).isEqualTo("add-on: quay\nname: \"quay\"\n");
  }

  @Test
  void a_folder_with_cards_stays_as_it_is() throws IOException {
    Files.writeString(parent.resolve("rule-base.yaml"), "rule-base: own\nname: Own\n");
    new FirstFolder(parent).ready(console(true, ""));
    assertThat(parent.resolve("add-on.yaml")).doesNotExist();
  }

  @Test
  void whoever_stops_writes_nothing() {
    Path folder = parent.resolve("quay");
    FirstFolder first = new FirstFolder(folder);
    assertThatThrownBy(() -> first.ready(console(true, ""))).isInstanceOf(ExitException.class);
    assertThat(folder).doesNotExist();
  }

  @Test
  void a_script_is_told_which_file_to_begin_with() {
    FirstFolder first = new FirstFolder(parent.resolve("quay"));
    assertThatThrownBy(() -> first.ready(console(false, "")))
        .isInstanceOf(UsageException.class)
        .hasMessageContaining("add-on.yaml of two lines: \"add-on: quay\"");
  }
}
