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

/** Everything that applies only to a casebook on a PostgreSQL server. */
final class PostgresServer {
  static final String PREFIX = "jdbc:postgresql:";
  static final String BEGIN = "begin";

  /** Begins a transaction that sees the data as of its first read. */
  static final String SNAPSHOT = "begin isolation level repeatable read, read only";

  /** Values of sslmode that require TLS or say plainly that it is not needed. */
  private static final Set<String> DECIDED =
      Set.of("disable", "require", "verify-ca", "verify-full");

  /** Silenced, because the driver's log would contain addresses with passwords. */
  private static final Logger LOG = Logger.getLogger("org.postgresql");

  static {
    LOG.setLevel(Level.OFF);
  }

  private PostgresServer() {}

  static boolean isUrl(String url) {
    return url.startsWith(PREFIX);
  }

  /**
   * Connects. A server that does not answer is given up soon, because somebody is waiting at the
   * prompt. Settings in the URL take precedence.
   *
   * @param patient for work that may take longer, such as changing large tables
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
   * Requires encryption for servers on other computers, unless the address says explicitly that it
   * is not needed. The driver alone would fall back to an unencrypted connection silently.
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

  /**
   * Whether the server is on this computer, decided from the text of the address alone. A host name
   * is not looked up, because whoever answers the lookup could claim that it is local.
   */
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
   * Whether the failure is one of the connection and not of the statement: SQLSTATE classes 08
   * (connection) and 57P (the server stops, crashes or starts), and 53300 (too many connections).
   */
  static boolean lost(SQLException trouble) {
    String state = trouble.getSQLState();
    return state != null
        && (state.startsWith("08") || state.startsWith("57P") || state.equals("53300"));
  }
}
