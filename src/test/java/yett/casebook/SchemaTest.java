package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

class SchemaTest {
  /** In an order in which they can be dropped. */
  static final List<String> TABLES =
      List.of(
          "case_begun",
          "set_apart",
          "case_person",
          "case_event",
          "case_file",
          "case_number",
          "site_revision",
          "site");

  @TempDir Path directory;

  private Path file() {
    return directory.resolve("casebook.db");
  }

  /** Otherwise the short cut past Flyway would skip a migration, or never be taken. */
  @Test
  void the_version_in_the_program_is_that_of_the_newest_migration() throws SQLException {
    Casebook.open(file()).close();

    try (var database =
        new SingleConnectionDataSource(SqliteFile.connect(SqliteFile.url(file())), true)) {
      var info = Schema.flyway(database).load().info();
      assertThat(info.current().getVersion())
          .isEqualTo(MigrationVersion.fromVersion(String.valueOf(Schema.VERSION)));
      assertThat(info.pending()).isEmpty();
      assertThat(Schema.flyway(database).load().validateWithResult().validationSuccessful).isTrue();
    }
  }

  @Test
  void an_existing_casebook_keeps_its_cases() {
    try (var casebook = Casebook.open(file())) {
      casebook.append(casebook.newCase("q1", Writer.AT), 0, Writer.event("A. Moor", 1));
    }

    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.events(casebook.find("1"))).hasSize(1);
    }
  }

  /** A program that died before its tables were laid out must not leave a file nobody can open. */
  @Test
  void a_casebook_whose_laying_out_was_cut_short_is_finished() throws SQLException {
    Casebook.open(file()).close();
    try (var connection = SqliteFile.connect(SqliteFile.url(file()));
        var statement = connection.createStatement()) {
      for (String table : TABLES) {
        statement.execute("drop table " + table);
      }
      statement.execute("delete from flyway_schema_history");
    }

    try (var casebook = Casebook.open(file())) {
      assertThat(casebook.newCase("q1", Writer.AT)).hasToString("2026-0001");
    }
  }
}
