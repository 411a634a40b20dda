package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

class TroublesTest {
  @TempDir Path directory;

  private Path file() {
    return directory.resolve("casebook.db");
  }

  private String url() {
    return "jdbc:sqlite:" + file();
  }

  @Test
  void a_file_that_is_no_database_is_left_alone() throws IOException {
    String letter = "Dear harbour master, the gate at the slipway ".repeat(40);
    Files.writeString(file(), letter);

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(file() + ": this file is not a casebook. It was not touched.");
    assertThat(file()).hasContent(letter);
  }

  /** What SQLite says on a disk without any room, tried on a small one. */
  @Test
  void a_disk_that_is_full_is_called_full() {
    for (var code : List.of(SQLiteErrorCode.SQLITE_FULL, SQLiteErrorCode.SQLITE_IOERR_SHMSIZE)) {
      assertThat(Troubles.explained("casebook.db", new SQLiteException("no room", code)))
          .hasMessageStartingWith("casebook.db: the disk is full. The last entry was not written;");
    }
  }

  @Test
  void another_programs_database_is_left_alone() throws Exception {
    execute("create table stock (part text)");
    byte[] before = Files.readAllBytes(file());

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            file()
                + ": this is another program's database. It was not touched. Name another file.");
    assertThat(file()).hasBinaryContent(before);
  }

  @Test
  void a_newer_programs_casebook_is_left_alone() throws Exception {
    Casebook.open(file()).close();
    execute(
        "insert into flyway_schema_history select 99, '99', description, type, script, checksum,"
            + " installed_by, installed_on, execution_time, success from flyway_schema_history"
            + " where version = '1'");
    byte[] before = Files.readAllBytes(file());

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            file()
                + ": this casebook was written by a newer Yett (its version is 99, this program"
                + " knows "
                + Schema.VERSION
                + "). Nothing was changed. Install the newer program.");
    assertThat(file()).hasBinaryContent(before);
  }

  @Test
  void damage_inside_the_file_is_told() throws IOException {
    CaseId id;
    try (var casebook = Casebook.open(file())) {
      id = casebook.newCase("q1", Writer.AT);
      for (int n = 0; n < 500; n++) {
        casebook.append(id, n, Writer.event("A. Moor", n));
      }
    }
    try (var damaged = new RandomAccessFile(file().toFile(), "rw")) {
      for (long at = 4096 * 6; at < damaged.length(); at++) {
        damaged.seek(at);
        damaged.write(0x5a);
      }
    }

    assertThatThrownBy(
            () -> {
              try (var casebook = Casebook.open(file())) {
                casebook.events(id);
              }
            })
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            file()
                + ": the casebook is damaged. Keep a copy of the file, then put the last back-up in"
                + " its place.");
  }

  @ParameterizedTest
  @CsvSource({"state, shut", "opened_at, yesterday", "id, seven"})
  void a_case_that_another_program_changed_is_set_apart_and_the_others_go_on(
      String column, String value) throws SQLException {
    CaseId other;
    try (var casebook = Casebook.open(file())) {
      casebook.newCase("q1", Writer.AT);
      other = casebook.newCase("q2", Writer.AT);
    }
    execute("update case_file set " + column + " = '" + value + "' where id = '2026-0001'");

    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.cases()).extracting(CaseSummary::id).containsExactly(other);
      assertThat(casebook.unreadable())
          .singleElement()
          .satisfies(u -> assertThat(u.why()).contains("\"" + value + "\""));
      assertThat(casebook.newCase("q3", Writer.AT)).hasToString("2026-0003");
      casebook.append(other, 0, Writer.event("A. Moor", 1));
      if (!column.equals("id")) {
        assertThatThrownBy(() -> casebook.summary(new CaseId(2026, 1)))
            .isInstanceOf(CasebookException.class)
            .hasMessageStartingWith("Case 2026-0001 cannot be read: ")
            .hasMessageContaining(value);
      }
    }
  }

  @Test
  void a_full_disk_loses_nothing_but_the_last_entry() throws SQLException {
    CaseId id;
    long written = 0;
    // The page limit makes the database answer as it does on a full disk.
    try (var casebook = Casebook.open(url() + "?max_page_count=40")) {
      id = casebook.newCase("q1", Writer.AT);
      var event = new NewEvent(Writer.AT, "A. Moor", "noted", "\"" + "x".repeat(5000) + "\"");
      CasebookException full = null;
      while (full == null) {
        try {
          casebook.append(id, written, event);
          written++;
        } catch (CasebookException e) {
          full = e;
        }
      }
      assertThat(full)
          .hasMessage(
              url()
                  + ": the disk is full. The last entry was not written; all before it is safe."
                  + " Free some space and enter it again.");
      assertThat(casebook.events(id)).hasSize((int) written).isNotEmpty();
      assertThat(casebook.summary(id).lastSeq()).isEqualTo(written);
    }

    try (var casebook = Casebook.open(file())) {
      casebook.append(id, written, Writer.event("A. Moor", 1));
    }
  }

  @Test
  void a_casebook_somebody_keeps_locked_is_told_and_can_be_written_to_afterwards()
      throws SQLException {
    try (var casebook = Casebook.open(url() + "?busy_timeout=50");
        Connection other = DriverManager.getConnection(url());
        var statement = other.createStatement()) {
      CaseId id = casebook.newCase("q1", Writer.AT);
      statement.execute("begin immediate");

      var locked =
          catchThrowableOfType(
              CasebookException.class, () -> casebook.append(id, 0, Writer.event("A. Moor", 1)));
      statement.execute("rollback");

      assertThat(locked).hasMessageContaining("another program keeps the casebook to itself");
      casebook.append(id, 0, Writer.event("A. Moor", 1));
      assertThat(casebook.events(id)).hasSize(1);
    }
  }

  @Test
  void a_file_in_place_of_the_directory_is_told() throws IOException {
    Files.writeString(directory.resolve("yett"), "");

    assertThatThrownBy(() -> Casebook.open(directory.resolve("yett").resolve("casebook.db")))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("cannot be made, because a file has that name")
        .hasMessageEndingWith("Choose another directory by setting YETT_HOME.");
  }

  /** It was a casebook once, or a disk that was full; a new one in its place would hide that. */
  @Test
  void an_empty_file_is_no_new_casebook() throws IOException {
    Files.createFile(file());

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(file() + ": this file is empty, so the casebook that was here");
    assertThat(file()).isEmptyFile();

    Files.delete(file());
    Casebook.open(file()).close();
    assertThat(file()).isNotEmptyFile();
  }

  @Test
  void a_link_leads_to_the_casebook_and_what_belongs_to_it_stands_there() throws IOException {
    Path real = Files.createDirectory(directory.resolve("disk")).resolve("kept.db");
    Files.createSymbolicLink(file(), real);
    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(file() + ": this is a link that leads nowhere (to " + real + ").");

    try (var casebook = Casebook.open(real)) {
      casebook.newCase("q1", Writer.AT);
    }
    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.cases()).hasSize(1);
      assertThat(directory.resolve("disk").resolve("kept.db-wal")).exists();
    }
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void a_second_name_of_the_file_is_told() throws IOException {
    Casebook.open(file()).close();
    Files.createLink(directory.resolve("other.db"), file());

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("another name besides (a hard link)");
  }

  /** Many programs keep the history of their tables in the same way. */
  @Test
  void another_programs_history_of_tables_is_none_of_ours() throws SQLException {
    Casebook.open(file()).close();
    for (String table : SchemaTest.TABLES) {
      execute("drop table " + table);
    }
    execute("create table stock (part text)");

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            file()
                + ": this is another program's database. It was not touched. Name another file.");
  }

  @Test
  void a_program_that_died_beginning_a_casebook_leaves_nothing_in_the_way() throws IOException {
    Files.writeString(directory.resolve("casebook.db.new"), "half of it");

    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.newCase("q1", Writer.AT)).hasToString("2026-0001");
    }
    assertThat(directory.resolve("casebook.db.new")).doesNotExist();
  }

  @Test
  void a_directory_in_place_of_the_file_is_told() throws IOException {
    Files.createDirectory(file());

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessageContaining("cannot be opened or made here, because this is a directory");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void a_place_where_nobody_may_write_is_told() {
    assertThatThrownBy(() -> Casebook.open(Path.of("/proc/yett/casebook.db")))
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith("/proc/yett/casebook.db: ")
        .hasMessageContaining("YETT_HOME");
  }

  @Test
  void a_read_only_directory_is_told() throws IOException {
    Assumptions.assumeTrue(
        directory.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(directory, PosixFilePermissions.fromString("r-xr-xr-x"));
    Assumptions.assumeFalse(Files.isWritable(directory), "the super-user may write anywhere");

    assertThatThrownBy(() -> Casebook.open(file()))
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            file()
                + ": you may not write here. Ask for the right to, or choose another directory by"
                + " setting YETT_HOME.");
  }

  @Test
  void a_read_only_file_can_be_read_and_says_why_it_cannot_be_written_to() {
    try (var casebook = Casebook.open(file())) {
      casebook.newCase("q1", Writer.AT);
    }
    assertThat(file().toFile().setReadOnly()).isTrue();
    Assumptions.assumeFalse(Files.isWritable(file()), "the super-user may write anywhere");

    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.cases()).hasSize(1);
      assertThatThrownBy(() -> casebook.newCase("q1", Writer.AT))
          .isInstanceOf(CasebookException.class)
          .hasMessageStartingWith(file() + ": you may not write here.");
    }
  }

  @Test
  void a_password_in_a_url_is_not_shown() {
    assertThatThrownBy(() -> Casebook.open("jdbc:nowhere://desk/yett?password=hemlock"))
        .isInstanceOf(CasebookException.class)
        .hasMessage(
            "jdbc:nowhere://desk/yett: this is not the address of a casebook. Write it as"
                + " jdbc:postgresql://HOST/DATABASE or jdbc:sqlite:FILE.")
        .hasMessageNotContaining("hemlock");
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url());
        var statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
