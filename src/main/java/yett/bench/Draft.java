package yett.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import yett.files.BoundedFile;
import yett.files.WholeFile;

/**
 * The answers about a card that is not written yet, so that nothing is lost if somebody stops. It
 * is a hidden file in the folder of the cards with a line {@code key=value} for each answer, in the
 * order in which they were given.
 */
public final class Draft {
  /** In bytes; thousands of lines. */
  private static final int LARGEST = 1 << 20;

  private final Path file;

  /**
   * @param kind of card; there is one draft for each kind
   */
  public Draft(Path folder, String kind) {
    this.file = folder.resolve(".new-" + kind + ".draft");
  }

  public Path file() {
    return file;
  }

  /** Key to answer; empty if there is no draft that can be read. */
  public Map<String, String> answers() {
    Map<String, String> answers = new LinkedHashMap<>();
    try {
      if (Files.isRegularFile(file)) {
        for (String line : BoundedFile.text(file, LARGEST).lines().toList()) {
          String[] parts = line.split("=", 2);
          if (parts.length == 2) {
            answers.put(parts[0], parts[1]);
          }
        }
      }
    } catch (IOException e) {
      return Map.of(); // unreadable: begin again
    }
    return answers;
  }

  /**
   * Stores the answers given so far.
   *
   * @throws UncheckedIOException if the folder cannot be written to; then no card could be written
   *     either
   */
  public void keep(Map<String, String> answers) {
    StringBuilder lines = new StringBuilder();
    answers.forEach(
        (key, answer) -> lines.append(key + "=" + answer.replaceAll("\\R", " ") + "\n"));
    try {
      if (Files.isSymbolicLink(file)) {
        throw new IOException("it is a link, and what it leads to is somebody's file");
      }
      WholeFile.replace(file, lines.toString());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file + ": " + e.getMessage(), e);
    }
  }

  /** Deletes the draft, because the card was written. */
  public void drop() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + file, e);
    }
  }
}
