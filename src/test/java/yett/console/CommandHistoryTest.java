package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Collections;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandHistoryTest {
  @TempDir private Path directory;

  @Test
  void commands_come_back_another_day_and_are_their_owners_alone() throws IOException {
    Path file = directory.resolve("own").resolve("commands.history");
    new CommandHistory(file).add("cases");
    new CommandHistory(file).add("record 7");

    assertThat(new CommandHistory(file).lines()).containsExactly("cases", "record 7");
    Assumptions.assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
        .isEqualTo("rwx------");
  }

  @Test
  void it_does_not_grow_for_ever() throws IOException {
    Path file = directory.resolve("commands.history");
    Files.write(file, Collections.nCopies(2 * CommandHistory.MOST + 1, "cases"));
    new CommandHistory(file).add("help");

    assertThat(new CommandHistory(file).lines()).hasSize(CommandHistory.MOST).endsWith("help");
    assertThat(file.toFile()).content().hasLineCount(CommandHistory.MOST);
  }

  @Test
  void what_cannot_be_read_or_written_is_done_without() throws IOException {
    Path noFolder = Files.createFile(directory.resolve("file")).resolve("commands.history");
    new CommandHistory(noFolder).add("cases");
    assertThat(new CommandHistory(noFolder).lines()).isEmpty();
    Path noText = Files.write(directory.resolve("history"), new byte[] {(byte) 0xff, '\n'});
    assertThat(new CommandHistory(noText).lines()).isEmpty();
  }
}
