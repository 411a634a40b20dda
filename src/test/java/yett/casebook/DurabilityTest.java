package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DurabilityTest {
  @TempDir Path directory;

  private Path file;
  private CaseId id;

  private void newCase() {
    file = directory.resolve("casebook.db");
    try (var casebook = Casebook.open(file)) {
      id = casebook.newCase("harrow-quay-3", Writer.AT);
    }
  }

  @Test
  void a_halted_program_loses_nothing_that_was_appended() throws Exception {
    newCase();

    int exit = Writer.start(file, "append-then-halt", id.toString(), "50").waitFor();

    assertThat(exit).isEqualTo(7);
    try (var casebook = Casebook.open(file)) {
      assertThat(casebook.events(id)).hasSize(50);
    }
  }

  @Test
  void a_killed_program_loses_at_most_the_event_it_was_writing() throws Exception {
    newCase();
    Process child = Writer.start(file, "append-for-ever", id.toString());

    long lastTold = tellings(child, 60);

    try (var casebook = Casebook.open(file)) {
      var events = casebook.events(id);
      assertThat((long) events.size()).isBetween(lastTold, lastTold + 1);
      assertThat(events)
          .allSatisfy(
              event -> assertThat(event.body()).isEqualTo("{\"n\":" + (event.seq() - 1) + "}"));
      assertThat(casebook.summary(id).lastSeq()).isEqualTo(events.size());
      casebook.append(id, events.size(), Writer.event("resumed", 0));
    }
  }

  @Test
  void a_commit_waits_for_the_disk_whatever_the_url_says() throws SQLException {
    newCase();

    // A casebook remembers its journal; how long to wait for the disk, each connection decides.
    try (Connection connection = SqliteFile.connect(SqliteFile.url(file) + "?synchronous=OFF")) {
      assertThat(pragma(connection, "synchronous")).isEqualTo("2"); // FULL
      assertThat(pragma(connection, "journal_mode")).isEqualTo("wal");
    }
  }

  /** Kills the child once it has told so many times, and reads what it had still told. */
  private static long tellings(Process child, long killAfter) throws Exception {
    try (var out = child.inputReader(StandardCharsets.US_ASCII)) {
      long last = 0;
      // The kill may cut the last line short, which then reads as a smaller number.
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Math.max(last, Writer.told(line).mapToLong(Long::parseLong).sum());
        if (last == killAfter) {
          // By its handle, because a Process closes its output when it is destroyed.
          child.toHandle().destroyForcibly();
        }
      }
      child.waitFor();
      return last;
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
