package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.Casebook;
import yett.console.Consoles;

class NativeLibraryTest {
  /** Any file among the classes of the tests. */
  private static final NativeLibrary LIBRARY =
      new NativeLibrary("yett.test.native", "/yett/files", "NativeLibraryTest.class");

  @TempDir Path directory;

  @Test
  void one_copy_serves_all_starts() throws IOException {
    Path first = LIBRARY.unpacked(directory).orElseThrow();
    var made = Files.getLastModifiedTime(first.resolve(LIBRARY.name()));
    Path second = LIBRARY.unpacked(directory).orElseThrow();

    assertThat(second).isEqualTo(first);
    assertThat(Files.getLastModifiedTime(second.resolve(LIBRARY.name()))).isEqualTo(made);
    assertThat(second.resolve(LIBRARY.name())).hasBinaryContent(bytes());
  }

  @Test
  void what_somebody_put_in_its_place_is_not_used() throws IOException {
    Path folder = LIBRARY.unpacked(directory).orElseThrow();
    Files.write(folder.resolve(LIBRARY.name()), new byte[] {9, 9, 9});

    LIBRARY.unpacked(directory);

    assertThat(folder.resolve(LIBRARY.name())).hasBinaryContent(bytes());
  }

  @Test
  void where_others_can_write_nothing_is_shared() throws IOException {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwxrwxrwx"));
    assertThat(LIBRARY.unpacked(directory)).isEmpty();
  }

  @Test
  void a_library_that_is_not_in_the_archive_is_left_to_whoever_needs_it() {
    assertThat(new NativeLibrary("p", "/yett/files", "none.so").unpacked(directory)).isEmpty();
    assertThat(directory).isEmptyDirectory();
  }

  @Test
  void the_library_is_told_where_it_is_unless_somebody_said_so_before() throws IOException {
    System.clearProperty(LIBRARY.property());
    try {
      LIBRARY.share(directory);
      Path told = Path.of(System.getProperty(LIBRARY.property()));
      assertThat(told).startsWith(directory);
      assertThat(told.resolve(LIBRARY.name())).hasBinaryContent(bytes());

      System.setProperty(LIBRARY.property(), "elsewhere");
      LIBRARY.share(directory);
      assertThat(System.getProperty(LIBRARY.property())).isEqualTo("elsewhere");
    } finally {
      System.clearProperty(LIBRARY.property());
    }
  }

  @Test
  void the_libraries_that_ship_have_a_native_part_for_this_system() throws IOException {
    Casebook.nativeLibrary().unpack(directory.resolve("driver"));
    Consoles.nativeLibrary().unpack(directory.resolve("terminal"));

    assertThat(directory.resolve("driver")).isNotEmptyDirectory();
    assertThat(directory.resolve("terminal")).isNotEmptyDirectory();
  }

  private static byte[] bytes() throws IOException {
    try (InputStream in = NativeLibraryTest.class.getResourceAsStream("NativeLibraryTest.class")) {
      return in.readAllBytes();
    }
  }
}
