package yett.console;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Reads lines of UTF-8, whatever the machine's own character set is. It reads byte by byte and
 * never past the end of the line, because what follows belongs to the next reader of the stream.
 */
record Utf8Lines(InputStream in) {
  /** Enough to show that a line is too long; the rest of such a line is dropped. */
  private static final int MOST_BYTES = 64 * 1024;

  /** The next line without its end; empty at the end of the stream. */
  Optional<String> next() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int b = in.read();
    if (b < 0) {
      return Optional.empty();
    }
    while (b >= 0 && b != '\n') {
      if (line.size() < MOST_BYTES) {
        line.write(b);
      }
      b = in.read();
    }
    return Optional.of(line.toString(StandardCharsets.UTF_8));
  }
}
