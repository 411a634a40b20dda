package yett.casebook;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Supplier;

/**
 * Runs work in a transaction, using SQL statements to begin and end it. JDBC's auto-commit switch
 * is not usable: SQLite's driver begins the next transaction as part of a commit, and if that has
 * to wait too long, reports a commit as failed that is on disk. If a begin failed, it also lets
 * statements run outside any transaction.
 *
 * @param begin the statement that begins one: it differs between databases
 */
record Transactions(Connection connection, String begin) {
  <T> T run(Supplier<T> work) throws SQLException {
    execute(begin);
    try {
      T result = work.get();
      execute("commit");
      return result;
    } catch (SQLException | RuntimeException | Error e) {
      rollBack(e);
      throw e;
    }
  }

  /**
   * Rolls back. This may fail because the database has already done so, for example when the disk
   * is full.
   */
  private void rollBack(Throwable because) {
    try {
      execute("rollback");
    } catch (SQLException e) {
      because.addSuppressed(e);
    }
  }

  private void execute(String sql) throws SQLException {
    try (var statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
