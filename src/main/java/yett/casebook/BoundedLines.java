package yett.casebook;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The lines of a file that somebody else wrote: neither a line nor the whole goes on for ever. */
final class BoundedLines implements Closeable {
  /** A case whose every event holds a page; far more than anybody types. */
  private static final int LONGEST = 32 << 20;

  /** About a hundred thousand cases. */
  private static final long MOST = 1L << 30;

  private final Path file;
  private final BufferedReader reader;
  private long read;

  /**
   * @throws CasebookException if it is no file, or too large for one
   */
  BoundedLines(Path file) throws IOException {
    this.file = file;
    if (!Files.exists(file)) {
      throw new NoSuchFileException(file.toString());
    }
    if (!Files.isRegularFile(file)) {
      throw new CasebookException(
          file
              + ": this is a directory, a device or a pipe. Cases are taken in from a file: write"
              + " them to one first.");
    }
    if (Files.size(file) > MOST) {
      throw tooLarge();
    }
    this.reader = Files.newBufferedReader(file);
  }

  /** The next line, without its end; null after the last. */
  String next() throws IOException {
    var line = new StringBuilder();
    int c = reader.read();
    if (c < 0) {
      return null;
    }
    for (; c >= 0 && c != '\n'; c = reader.read()) {
      line.append((char) c);
      if (line.length() > LONGEST) {
        throw new IllegalArgumentException(
            "this line is longer than any that cases export writes.");
      }
    }
    read += line.length() + 1L;
    if (read > MOST) { // it grew meanwhile
      throw tooLarge();
    }
    return line.toString();
  }

  private CasebookException tooLarge() {
    return new CasebookException(
        file
            + ": this file is larger than any that is taken in (1 GiB). Have the cases written to"
            + " several files.");
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }
}
