package yett.casebook;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Supplier;

/**
 * Runs work in a transaction, by the statements themselves. Switching JDBC's auto-commit would not
 * do: SQLite's driver begins the next transaction as part of a commit, and reports a commit that is
 * on the disk as failed if that has to wait too long; and after a beginning that failed it lets
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

  /** May fail because the database has already done it, when the disk is full for example. */
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
