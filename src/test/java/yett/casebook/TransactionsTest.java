package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

class TransactionsTest {
  @TempDir Path directory;

  @BeforeEach
  void a_casebook_with_one_case() {
    try (var casebook = Casebook.open(directory.resolve("casebook.db"))) {
      casebook.newCase("q1", Writer.AT);
    }
  }

  @Test
  void work_that_fails_half_way_leaves_nothing() throws SQLException {
    try (var desk = new Desk(directory)) {
      assertThatThrownBy(
              () ->
                  desk.transactions.run(
                      () -> {
                        desk.set(99);
                        throw new IllegalStateException("half way");
                      }))
          .hasMessage("half way");

      assertThat(desk.number()).isEqualTo(1);
    }
  }

  /** With SQLite's own "begin" the slower of two readers is refused instead of waiting. */
  @Test
  void work_that_reads_before_it_writes_takes_its_turn() throws Exception {
    var pool = Executors.newFixedThreadPool(2);
    try {
      for (var done : pool.invokeAll(List.of(countTo(200), countTo(200)))) {
        done.get();
      }
    } finally {
      pool.shutdownNow();
    }

    try (var desk = new Desk(directory)) {
      assertThat(desk.number()).isEqualTo(401);
    }
  }

  private Callable<Void> countTo(int times) {
    return () -> {
      try (var desk = new Desk(directory)) {
        for (int i = 0; i < times; i++) {
          desk.transactions.run(() -> desk.set(desk.number() + 1));
        }
      }
      return null;
    };
  }

  private static final class Desk implements AutoCloseable {
    private final SingleConnectionDataSource database;
    private final JdbcClient client;
    private final Transactions transactions;

    Desk(Path directory) throws SQLException {
      var connection = SqliteFile.connect(SqliteFile.url(directory.resolve("casebook.db")));
      database = new SingleConnectionDataSource(connection, true);
      client = JdbcClient.create(database);
      transactions = new Transactions(connection, SqliteFile.BEGIN);
    }

    int number() {
      return client.sql("select last_number from case_number").query(Integer.class).single();
    }

    int set(int number) {
      return client.sql("update case_number set last_number = ?").param(number).update();
    }

    @Override
    public void close() {
      database.destroy();
    }
  }
}
