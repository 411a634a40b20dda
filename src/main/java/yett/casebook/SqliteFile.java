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

/** All that is particular to the embedded database when it is opened. */
final class SqliteFile {
  /**
   * A transaction that reads first and writes later cannot wait for its turn; one that asks for the
   * turn at once can.
   */
  static final String BEGIN = "begin immediate";

  private static final String LOCK = ".lock";

  /** Sees what was there when it first read, and lets others write. */
  static final String SNAPSHOT = "begin";

  private static final String BUSY_MILLISECONDS = "10000";

  /** A file lock excludes other processes only; this one excludes the threads of our own. */
  private static final ReentrantLock OPENING = new ReentrantLock();

  private SqliteFile() {}

  /** By way of a URI, because in a bare file name a "?" would begin the settings. */
  static String url(Path file) {
    return JDBC.PREFIX + file.toAbsolutePath().toUri();
  }

  static boolean isUrl(String url) {
    return url.startsWith(JDBC.PREFIX);
  }

  /** A URL may set the patience ({@code ?busy_timeout=100}), but not lower the safety. */
  static Connection connect(String url) throws SQLException {
    var settings = new Properties();
    // In WAL the default, NORMAL, may lose the last transactions when the power goes.
    set(settings, Pragma.SYNCHRONOUS, "FULL");
    set(settings, Pragma.FOREIGN_KEYS, "true");
    if (!url.contains(Pragma.BUSY_TIMEOUT.pragmaName)) {
      set(settings, Pragma.BUSY_TIMEOUT, BUSY_MILLISECONDS);
    }
    // Who is forgotten must be gone from the file, too.
    set(settings, Pragma.SECURE_DELETE, "true");
    return JDBC.createConnection(url, settings);
  }

  /** Wipes what was deleted also from the journal; others who read may put that off. */
  static void wipe(Connection connection) throws SQLException {
    try (var statement = connection.createStatement()) {
      statement.execute("pragma wal_checkpoint(truncate)");
    }
  }

  /**
   * Lets others read while one writes. The file remembers it, therefore only once it is known to be
   * a casebook.
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
   * Begins a new casebook under another name and puts it in its place when it is whole: a program
   * that dies on the way leaves no empty file that looks like a casebook that was lost.
   *
   * @param maker is given the address to make it at
   */
  static void begin(Path file, Maker maker) throws IOException, SQLException {
    if (Files.exists(file)) {
      return;
    }
    Path next = beside(file, ".new");
    for (String ending : List.of("", "-wal", "-shm", "-journal")) {
      Files.deleteIfExists(beside(next, ending));
    }
    OwnFiles.open(next).close(); // what the database makes beside it has the same rights
    maker.make(url(next));
    Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
  }

  /**
   * Two programs that start at once on a new file must not both lay out its tables, and Flyway does
   * not lock this database. The lock is a file of its own: closing any other handle on the database
   * file would drop the database's locks.
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
