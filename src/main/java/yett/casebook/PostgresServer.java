package yett.casebook;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;

/** All that is particular to a casebook on a PostgreSQL server. */
final class PostgresServer {
  static final String PREFIX = "jdbc:postgresql:";
  static final String BEGIN = "begin";

  /** Between a name and an "@": what some addresses hold, and this driver does not take. */
  private static final Pattern NAME_AND_PASSWORD = Pattern.compile("//[^/@]*@");

  private static final Pattern SCHEMA = Pattern.compile("[?&]currentSchema=([^&]*)");

  /** Silent: the driver's log would hold addresses with passwords. */
  private static final Logger LOG = Logger.getLogger("org.postgresql");

  static {
    LOG.setLevel(Level.OFF);
  }

  private PostgresServer() {}

  static boolean isUrl(String url) {
    return url.startsWith(PREFIX);
  }

  /** An address without what may be a password. */
  static String shown(String url) {
    return NAME_AND_PASSWORD.matcher(url.split("[?;]", 2)[0]).replaceAll("//");
  }

  /** What tells one casebook from another: several may share a database, each in its schema. */
  static String name(String url) {
    var schema = SCHEMA.matcher(url);
    return shown(url) + (schema.find() ? " " + schema.group(1) : "");
  }

  /**
   * Somebody waits at the prompt: a server that does not answer is given up soon. Settings in the
   * URL come first.
   *
   * @param patient for work that may take its time, such as changing large tables
   */
  static Connection connect(String url, boolean patient) throws SQLException {
    var settings = new Properties();
    settings.setProperty("connectTimeout", "4");
    settings.setProperty("loginTimeout", "8");
    settings.setProperty("socketTimeout", patient ? "0" : "15");
    settings.setProperty("tcpKeepAlive", "true");
    settings.setProperty("ApplicationName", "Yett");
    var connection = DriverManager.getConnection(url, settings);
    try (var statement = connection.createStatement();
        var row = statement.executeQuery("show server_encoding")) {
      row.next();
      if (!"UTF8".equals(row.getString(1))) {
        throw new CasebookException(
            shown(url)
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
   * Whether the connection, rather than what was asked over it, is at fault: SQLSTATE classes 08
   * (connection) and 57P (the server stops, crashes or starts), and 53300 (too many connections).
   */
  static boolean lost(SQLException trouble) {
    String state = trouble.getSQLState();
    return state != null
        && (state.startsWith("08") || state.startsWith("57P") || state.equals("53300"));
  }
}
