package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedLibraryTest {
  private static final byte[] LIBRARY = {1, 2, 3};

  @TempDir Path directory;

  @Test
  void one_copy_serves_all_starts() throws IOException {
    Path first = SharedLibrary.unpacked(directory, "lib.so", library()).orElseThrow();
    var made = Files.getLastModifiedTime(first.resolve("lib.so"));
    Path second = SharedLibrary.unpacked(directory, "lib.so", library()).orElseThrow();

    assertThat(second).isEqualTo(first);
    assertThat(Files.getLastModifiedTime(second.resolve("lib.so"))).isEqualTo(made);
    assertThat(second.resolve("lib.so")).hasBinaryContent(LIBRARY);
  }

  @Test
  void what_somebody_put_in_its_place_is_not_used() throws IOException {
    Path folder = SharedLibrary.unpacked(directory, "lib.so", library()).orElseThrow();
    Files.write(folder.resolve("lib.so"), new byte[] {9, 9, 9});

    SharedLibrary.unpacked(directory, "lib.so", library());

    assertThat(folder.resolve("lib.so")).hasBinaryContent(LIBRARY);
  }

  @Test
  void where_others_can_write_nothing_is_shared() throws IOException {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwxrwxrwx"));
    assertThat(SharedLibrary.unpacked(directory, "lib.so", library())).isEmpty();
  }

  @Test
  void a_library_that_is_not_in_the_archive_is_left_to_whoever_needs_it() {
    assertThat(SharedLibrary.unpacked(directory, "lib.so", null)).isEmpty();
    assertThat(directory).isEmptyDirectory();
  }

  private static InputStream library() {
    return new ByteArrayInputStream(LIBRARY);
  }
}
