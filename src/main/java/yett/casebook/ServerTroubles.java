package yett.casebook;

import java.net.UnknownHostException;
import java.sql.SQLException;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;

/**
 * Explains the errors of a PostgreSQL server in plain words, by their SQLSTATE (PostgreSQL
 * documentation, appendix "Error Codes").
 */
final class ServerTroubles {
  private static final String NOT_DONE = " The last entry was not written.";

  private ServerTroubles() {}

  static CasebookException explained(Address address, Throwable trouble) {
    String where = address.shown();
    Throwable cause = address.cause(trouble);
    var refusal = Troubles.find(trouble, SQLException.class);
    if (refusal.isPresent() && PostgresServer.lost(refusal.get())) {
      return new CasebookUnreachable(where + ": " + address.without(lost(refusal.get())), cause);
    }
    String words = refusal.map(e -> words(where, e)).orElseGet(() -> otherWords(trouble));
    return new CasebookException(where + ": " + address.without(words), cause);
  }

  private static String lost(SQLException trouble) {
    if (Troubles.find(trouble, UnknownHostException.class).isPresent()) {
      return "no computer of this name is known. See that the name in YETT_CASEBOOK is right and"
          + " that the network is there.";
    }
    // The driver has no SQLSTATE for these, but in every language its messages have these words.
    String told = Troubles.told(trouble);
    if (told.contains("sslmode")) {
      return "the sslmode in YETT_CASEBOOK is none that there is. Write sslmode=verify-full or"
          + " sslmode=require.";
    }
    if (told.contains("HostnameVerifier")) {
      return "the server's certificate is for a computer of another name, so this may not be the"
          + " right server. Write the name in YETT_CASEBOOK as the certificate has it, or ask the"
          + " server's administrator.";
    }
    if (told.contains("PKIX")) {
      return "the server's certificate is not one that sslrootcert vouches for, so this may not be"
          + " the right server, or it has a new certificate. Ask its administrator for the"
          + " certificate to check it by.";
    }
    if (told.contains("SSL")) {
      return "an encrypted connection (TLS) to the server cannot be made ("
          + told
          + "). Its administrator switches it on with ssl = on in postgresql.conf, and gives"
          + " you the certificate to check it by (sslrootcert). If the connection may be"
          + " unencrypted, so that anybody along the way can read it, set sslmode=disable in"
          + " YETT_CASEBOOK.";
    }
    return switch (trouble.getSQLState()) {
      case "08001" ->
          "the server does not answer. See that the network is there, that the name and port in"
              + " YETT_CASEBOOK are right, and that PostgreSQL runs and lets this computer in.";
      case "08004" ->
          "the server refuses the connection. Most often no password was found for it: put a line"
              + " HOST:PORT:DATABASE:USER:PASSWORD into ~/.pgpass (on Windows"
              + " %APPDATA%\\postgresql\\pgpass.conf).";
      case "53300" ->
          "the server has no room for another connection. Try again in a moment; if it"
              + " lasts, its administrator can raise max_connections.";
      case "57P03" -> "the server is just starting or stopping. Try again in a moment.";
      default -> "the connection to the server was lost.";
    };
  }

  private static String words(String where, SQLException trouble) {
    String state = trouble.getSQLState() == null ? "" : trouble.getSQLState();
    return switch (state) {
      case "28P01" ->
          "the server does not accept this user and password. They are in ~/.pgpass, or as"
              + " user and password in YETT_CASEBOOK.";
      case "28000" ->
          "the server does not let this user in from here, or not over such a connection."
              + " Its administrator allows it in pg_hba.conf.";
      case "3D000" ->
          "there is no such database on this server. Its administrator makes it with:"
              + " createdb -E UTF8 -T template0 "
              + where.substring(where.lastIndexOf('/') + 1)
              + ".";
      case "42501", "3F000" ->
          "this user may not do that here. Its administrator grants it with: grant create"
              + " on schema public.";
      case "25006" ->
          "this server is read-only: it is a stand-by copy. Name the main server in"
              + " YETT_CASEBOOK."
              + NOT_DONE;
      case "53100" -> "the server's disk is full." + NOT_DONE;
      case "57014", "55P03" ->
          "the server took too long and gave up." + NOT_DONE + " Try it again.";
      default ->
          "the server refused ("
              + Troubles.told(trouble)
              + "). Open the case again and look whether the last entry is there.";
    };
  }

  private static String otherWords(Throwable trouble) {
    var flyway = Troubles.find(trouble, FlywayException.class);
    if (flyway.isPresent()
        && flyway.get().getErrorCode()
            == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
      return "this is another program's database. It was not touched. Make one for Yett alone and"
          + " name that.";
    }
    return "the casebook cannot be used (" + Troubles.told(trouble) + ").";
  }
}
