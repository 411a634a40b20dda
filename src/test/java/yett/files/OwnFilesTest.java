package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnFilesTest {
  @TempDir Path directory;

  @BeforeEach
  void rights_are_known_here() {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
  }

  @Test
  void what_is_made_is_for_its_owner_alone() throws IOException {
    Path folder = directory.resolve("share").resolve("yett");
    OwnFiles.folder(folder);
    OwnFiles.open(folder.resolve("a"), StandardOpenOption.APPEND).close();

    assertThat(rights(folder)).isEqualTo("rwx------");
    assertThat(rights(folder.getParent())).isEqualTo("rwx------");
    assertThat(rights(folder.resolve("a"))).isEqualTo("rw-------");
    assertThat(OwnFiles.isOpen(folder)).isFalse();
  }

  @Test
  void a_file_that_others_could_read_is_shut_when_it_is_used() throws IOException {
    Path file = Files.writeString(directory.resolve("a"), "kept");
    set(file, "rw-rw-r--");
    OwnFiles.open(file, StandardOpenOption.APPEND).close();
    assertThat(rights(file)).isEqualTo("rw-------");
    assertThat(file).hasContent("kept");
  }

  @Test
  void shutting_gives_no_right_that_was_not_there() throws IOException {
    Path file = Files.writeString(directory.resolve("a"), "kept");
    set(file, "r--r--r--");
    OwnFiles.shut(file);
    assertThat(rights(file)).isEqualTo("r--------");
    OwnFiles.shut(directory.resolve("not there"));
  }

  @Test
  void a_folder_that_was_there_keeps_its_rights_and_is_known_to_be_open() throws IOException {
    Path folder = Files.createDirectory(directory.resolve("open"));
    for (String open : new String[] {"rwxr-x---", "rwx-----x", "rwx---r--", "rwx-w----"}) {
      set(folder, open);
      OwnFiles.folder(folder);
      assertThat(rights(folder)).isEqualTo(open);
      assertThat(OwnFiles.isOpen(folder)).as(open).isTrue();
      assertThat(OwnFiles.othersWrite(folder)).as(open).isEqualTo(open.endsWith("w----"));
    }
    assertThat(OwnFiles.isOpen(directory.resolve("not there"))).isFalse();
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  private static void set(Path path, String rights) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
  }
}
