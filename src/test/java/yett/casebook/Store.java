package yett.casebook;

import java.nio.file.Path;
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

  static Casebook open(String address) {
    return address.startsWith("jdbc:") ? Casebook.open(address) : Casebook.open(Path.of(address));
  }
}
