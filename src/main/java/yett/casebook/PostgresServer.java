package yett.casebook;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.postgresql.Driver;

/** All that is particular to a casebook on a PostgreSQL server. */
final class PostgresServer {
  static final String PREFIX = "jdbc:postgresql:";
  static final String BEGIN = "begin";

  /** Sees what was there when it first read. */
  static final String SNAPSHOT = "begin isolation level repeatable read, read only";

  /** Whoever writes one of these wants TLS, or says plainly that it may be left out. */
  private static final Set<String> DECIDED =
      Set.of("disable", "require", "verify-ca", "verify-full");

  /** Silent: the driver's log would hold addresses with passwords. */
  private static final Logger LOG = Logger.getLogger("org.postgresql");

  static {
    LOG.setLevel(Level.OFF);
  }

  private PostgresServer() {}

  static boolean isUrl(String url) {
    return url.startsWith(PREFIX);
  }

  /**
   * Somebody waits at the prompt: a server that does not answer is given up soon. Settings in the
   * URL come first.
   *
   * @param patient for work that may take its time, such as changing large tables
   */
  static Connection connect(Address address, boolean patient) throws SQLException {
    var settings = new Properties();
    settings.setProperty("connectTimeout", "4");
    settings.setProperty("loginTimeout", "8");
    settings.setProperty("socketTimeout", patient ? "0" : "15");
    settings.setProperty("tcpKeepAlive", "true");
    settings.setProperty("ApplicationName", "Yett");
    encrypt(address, settings);
    var connection = DriverManager.getConnection(address.url(), settings);
    try (var statement = connection.createStatement();
        var row = statement.executeQuery("show server_encoding")) {
      row.next();
      if (!"UTF8".equals(row.getString(1))) {
        throw new CasebookException(
            address.shown()
                + ": this database keeps texts as "
                + row.getString(1)
                + ", which loses letters. Make one with: create database yett encoding 'UTF8'"
                + " template template0.");
      }
      return connection;
    } catch (SQLException | RuntimeException e) {
      connection.close();
      throw e;
    }
  }

  /**
   * What leaves this computer is encrypted, unless the address says in words that it need not be.
   * The driver by itself would fall back to an open line without telling anybody.
   */
  static void encrypt(Address address, Properties settings) {
    Properties given = Driver.parseURL(address.url(), new Properties());
    if (given == null || isHere(given.getProperty("PGHOST", "localhost"))) {
      return;
    }
    String mode = given.getProperty("sslmode", "").toLowerCase(Locale.ROOT);
    if (mode.isEmpty()) {
      if (!List.of("", "true").contains(given.getProperty("ssl", "no"))) {
        settings.setProperty("sslmode", "require");
      }
    } else if (!DECIDED.contains(mode)) {
      throw new CasebookException(
          address.shown()
              + ": with sslmode="
              + Shown.quoted(mode).replace("\"", "")
              + " the connection may be unencrypted without anybody noticing. Write"
              + " sslmode=verify-full or sslmode=require to encrypt it, or sslmode=disable if it"
              + " may be unencrypted.");
    }
  }

  /** By name only: whoever is asked for another's address can say that it is here. */
  private static boolean isHere(String hosts) {
    return Stream.of(hosts.split(","))
        .map(host -> host.strip().replaceAll("[\\[\\]]", "").toLowerCase(Locale.ROOT))
        .allMatch(
            host ->
                host.isEmpty()
                    || host.equals("localhost")
                    || host.matches("127(\\.\\d{1,3}){3}")
                    || host.matches("(0*:)*0*1")
                    || host.startsWith("/"));
  }

  /**
   * Whether the connection, rather than what was asked over it, is at fault: SQLSTATE classes 08
   * (connection) and 57P (the server stops, crashes or starts), and 53300 (too many connections).
   */
  static boolean lost(SQLException trouble) {
    String state = trouble.getSQLState();
    return state != null
        && (state.startsWith("08") || state.startsWith("57P") || state.equals("53300"));
  }
}
