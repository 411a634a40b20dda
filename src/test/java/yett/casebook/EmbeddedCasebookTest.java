package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What only a casebook in a file has to do. */
class EmbeddedCasebookTest {
  @TempDir Path directory;

  @Test
  void a_file_name_may_hold_any_character() {
    Path odd = directory.resolve("Kai 7? #é% æ").resolve("case;book?mode=ro.db");
    try (var other = Casebook.open(odd)) {
      other.newCase("q1", Writer.AT);
    }

    assertThat(odd).isRegularFile();
    try (var again = Casebook.open(odd)) {
      assertThat(again.cases()).hasSize(1);
    }
  }

  @Test
  void the_same_casebook_opens_by_url() {
    CaseId id;
    try (var casebook = Casebook.open(directory.resolve("casebook.db"))) {
      id = casebook.newCase("q1", Writer.AT);
    }

    try (var byUrl = Casebook.open("jdbc:sqlite:" + directory.resolve("casebook.db"))) {
      assertThat(byUrl.cases()).extracting(CaseSummary::id).containsExactly(id);
    }
  }

  @Test
  void a_new_directory_is_closed_to_others() throws Exception {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path made = directory.resolve("share").resolve("yett");

    Casebook.open(made.resolve("casebook.db")).close();

    assertThat(Files.getPosixFilePermissions(made))
        .isEqualTo(PosixFilePermissions.fromString("rwx------"));
  }

  @Test
  void every_file_is_closed_to_others_whatever_stood_there_before() throws Exception {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("rwxr-xr-x"));
    Path file = directory.resolve("case & book.db");
    try (var casebook = Casebook.open(file)) {
      casebook.newCase("q1", Writer.AT);
      assertThat(rightsOfAll()).hasSize(4).containsOnly("rw-------");
      try (Stream<Path> files = Files.list(directory)) {
        for (Path each : files.toList()) {
          Files.setPosixFilePermissions(each, PosixFilePermissions.fromString("rw-rw-r--"));
        }
      }
      try (var second = Casebook.open(file)) {
        second.newCase("q1", Writer.AT);
        assertThat(rightsOfAll()).hasSize(4).containsOnly("rw-------");
      }
    }
  }

  private List<String> rightsOfAll() throws IOException {
    List<String> rights = new ArrayList<>();
    try (Stream<Path> files = Files.list(directory)) {
      for (Path file : files.toList()) {
        rights.add(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
      }
    }
    return rights;
  }

  @Test
  void a_commit_waits_for_the_disk_whatever_the_url_says() throws SQLException {
    Path file = directory.resolve("casebook.db");
    Casebook.open(file).close();

    // A casebook remembers its journal; how long to wait for the disk, each connection decides.
    try (Connection connection = SqliteFile.connect(SqliteFile.url(file) + "?synchronous=OFF")) {
      assertThat(pragma(connection, "synchronous")).isEqualTo("2"); // FULL
      assertThat(pragma(connection, "journal_mode")).isEqualTo("wal");
    }
  }

  private static String pragma(Connection connection, String name) throws SQLException {
    try (var statement = connection.createStatement();
        var row = statement.executeQuery("pragma " + name)) {
      row.next();
      return row.getString(1);
    }
  }
}
