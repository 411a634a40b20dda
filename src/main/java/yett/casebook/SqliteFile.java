package yett.casebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.locks.ReentrantLock;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig.Pragma;
import yett.files.OwnFiles;

/** Everything that applies only to opening the embedded database. */
final class SqliteFile {
  /**
   * Begins a transaction with the right to write. One that reads first and asks for it later would
   * fail instead of waiting for its turn.
   */
  static final String BEGIN = "begin immediate";

  private static final String LOCK = ".lock";

  /** Begins a transaction that sees the data as of its first read and lets others write. */
  static final String SNAPSHOT = "begin";

  private static final String BUSY_MILLISECONDS = "10000";

  /** Excludes the threads of this process; a file lock excludes other processes only. */
  private static final ReentrantLock OPENING = new ReentrantLock();

  private SqliteFile() {}

  /**
   * The JDBC URL of the file, in URI form, because in a bare file name a "?" would begin the
   * settings.
   */
  static String url(Path file) {
    return JDBC.PREFIX + file.toAbsolutePath().toUri();
  }

  static boolean isUrl(String url) {
    return url.startsWith(JDBC.PREFIX);
  }

  /**
   * Connects. The URL may set the waiting time ({@code ?busy_timeout=100}), but cannot lower the
   * safety of the data.
   */
  static Connection connect(String url) throws SQLException {
    var settings = new Properties();
    // With WAL the default, NORMAL, may lose the last transactions in a power failure.
    set(settings, Pragma.SYNCHRONOUS, "FULL");
    set(settings, Pragma.FOREIGN_KEYS, "true");
    if (!url.contains(Pragma.BUSY_TIMEOUT.pragmaName)) {
      set(settings, Pragma.BUSY_TIMEOUT, BUSY_MILLISECONDS);
    }
    // Data of people who are forgotten has to disappear from the file as well.
    set(settings, Pragma.SECURE_DELETE, "true");
    return JDBC.createConnection(url, settings);
  }

  /** Removes deleted data from the journal too; this may be delayed while others are reading. */
  static void wipe(Connection connection) throws SQLException {
    try (var statement = connection.createStatement()) {
      statement.execute("pragma wal_checkpoint(truncate)");
    }
  }

  /**
   * Lets others read while one writes (WAL). The file remembers the setting, so it is made only
   * once the file is known to be a casebook.
   */
  static void writeAhead(Connection connection) throws SQLException {
    try (var statement = connection.createStatement()) {
      statement.execute("pragma journal_mode = wal");
    }
  }

  private static void set(Properties settings, Pragma pragma, String value) {
    settings.setProperty(pragma.pragmaName, value);
  }

  static Path beside(Path file, String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }

  /**
   * Makes a new casebook under another name and moves it into place when it is complete. A program
   * that dies in between then leaves no empty file that looks like a casebook that has lost its
   * data.
   *
   * @param maker receives the address at which to make it
   */
  static void begin(Path file, Maker maker) throws IOException, SQLException {
    if (Files.exists(file)) {
      return;
    }
    Path next = beside(file, ".new");
    for (String ending : List.of("", "-wal", "-shm", "-journal")) {
      Files.deleteIfExists(beside(next, ending));
    }
    OwnFiles.open(next).close(); // SQLite gives its other files the same permissions
    maker.make(url(next));
    Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
  }

  /**
   * Runs the opening while other programs are locked out. Two programs that start at once on a new
   * file must not both create its tables, and Flyway does not lock this database. The lock is a
   * file of its own, because closing any other handle on the database file would release the
   * database's locks.
   */
  static <T> T aloneWhileOpening(Path file, Opening<T> opening) throws IOException, SQLException {
    Path lock = beside(file, LOCK);
    OPENING.lock();
    try (var channel = OwnFiles.open(lock)) {
      channel.lock();
      for (String part : List.of("", "-wal", "-shm")) {
        OwnFiles.shut(beside(file, part));
      }
      return opening.open();
    } finally {
      OPENING.unlock();
    }
  }

  interface Opening<T> {
    T open() throws IOException, SQLException;
  }

  interface Maker {
    void make(String url) throws SQLException;
  }
}
