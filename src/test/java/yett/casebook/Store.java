package yett.casebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import yett.testing.PostgresServer;

/** The databases that a casebook can be kept in. */
enum Store {
  EMBEDDED {
    @Override
    String newAddress(Path directory) {
      return directory.resolve("casebook.db").toString();
    }
  },
  SERVER {
    @Override
    String newAddress(Path directory) {
      return PostgresServer.shared().newCasebook();
    }
  };

  /** A place for a casebook where there is none yet: a file or a URL. */
  abstract String newAddress(Path directory);

  /**
   * An empty casebook in such a place, laid out once and copied since: what tests wait for most.
   */
  String newCasebook(Path directory) {
    String address = newAddress(directory);
    if (this == EMBEDDED) {
      try {
        Files.write(Path.of(address), Template.FILE);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return address;
  }

  private static final class Template {
    private static final byte[] FILE = file();

    private static byte[] file() {
      try {
        Path file = Files.createTempDirectory("yett-template").resolve("casebook.db");
        Casebook.open(file).close();
        byte[] content = Files.readAllBytes(file);
        for (String ending : List.of("", ".lock")) {
          Files.delete(file.resolveSibling("casebook.db" + ending));
        }
        Files.delete(file.getParent());
        return content;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  static Casebook open(String address) {
    return address.startsWith("jdbc:") ? Casebook.open(address) : Casebook.open(Path.of(address));
  }

  /** As another program would. */
  static void execute(String address, String... statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url(address));
        var statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  /** Lays out the tables as a program of an earlier version did. */
  static void layOut(String address, String version) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url(address))) {
      var database = new SingleConnectionDataSource(connection, true);
      Schema.flyway(database).target(MigrationVersion.fromVersion(version)).load().migrate();
    }
  }

  private static String url(String address) {
    return address.startsWith("jdbc:") ? address : "jdbc:sqlite:" + address;
  }
}
