package yett.casebook;

import java.sql.SQLException;
import java.time.Duration;

/**
 * Saves somebody in a call the wait for a server that does not even refuse the connection. After a
 * long wait, the server is not tried again for a while.
 */
final class ServerPause {
  private static final Duration LONG = Duration.ofSeconds(2);
  private static final Duration WHILE = Duration.ofSeconds(30);

  private SQLException last;
  private long triedAt;

  Session open(Opening opening) throws SQLException {
    if (last != null && System.nanoTime() - triedAt < WHILE.toNanos()) {
      throw last;
    }
    long start = System.nanoTime();
    try {
      Session session = opening.open();
      last = null;
      return session;
    } catch (SQLException e) {
      triedAt = System.nanoTime();
      last = PostgresServer.lost(e) && triedAt - start > LONG.toNanos() ? e : null;
      throw e;
    }
  }

  interface Opening {
    Session open() throws SQLException;
  }
}
