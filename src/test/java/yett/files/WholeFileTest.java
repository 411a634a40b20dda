package yett.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  private static final long NOBODY = 999_999_999_999L;

  @TempDir Path directory;

  @Test
  void the_old_text_is_whole_until_the_new_one_is() throws IOException {
    Path file = Files.writeString(directory.resolve("draft"), "old");
    // Another name for the same file: it shows whether that file itself was written to.
    Path old = Files.createLink(directory.resolve("link"), file);

    WholeFile.replace(file, "new");

    assertThat(file).hasContent("new");
    assertThat(old).hasContent("old");
  }

  @Test
  void what_breaks_off_leaves_nothing_behind() throws IOException {
    Path file = directory.resolve("export.jsonl");
    assertThatThrownBy(
            () ->
                WholeFile.createOwn(
                    file,
                    to -> {
                      to.write("half");
                      to.flush();
                      throw new IOException("no space left");
                    }))
        .isInstanceOf(IOException.class)
        .hasMessage("no space left");
    assertThat(directory).isEmptyDirectory();
  }

  @Test
  void what_is_there_is_not_overwritten_by_a_new_file() throws IOException {
    Path file = Files.writeString(directory.resolve("a"), "there");
    assertThatThrownBy(() -> WholeFile.create(file, "new"))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(file).hasContent("there");
  }

  @Test
  void what_a_killed_program_had_begun_is_swept_away_and_what_a_running_one_writes_is_not()
      throws IOException {
    Path left = Files.writeString(directory.resolve("a." + NOBODY + ".part"), "ha");
    Path other = Files.writeString(directory.resolve("b." + NOBODY + ".part"), "ha");
    Path running = Files.writeString(directory.resolve("a." + parent() + ".part"), "ha");

    WholeFile.replace(directory.resolve("a"), "whole");

    assertThat(left).doesNotExist();
    assertThat(other).exists();
    assertThat(running).exists();
  }

  @Test
  void a_link_stays_a_link_and_rights_stay_as_they_were() throws IOException {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path file = Files.writeString(directory.resolve("real"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(directory.resolve("link"), file);

    WholeFile.replace(link, "new");

    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("new");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void what_tells_of_people_is_for_its_owner_alone() throws IOException {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path file = directory.resolve("export.jsonl");
    WholeFile.createOwn(file, to -> to.write("Zo\u00eb"));
    assertThat(file).hasContent("Zo\u00eb");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  private static long parent() {
    return ProcessHandle.current().parent().orElseThrow().pid();
  }
}
