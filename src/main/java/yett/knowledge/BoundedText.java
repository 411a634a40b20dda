package yett.knowledge;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Text of anybody: no more of it than can be held and looked through soon. Cards, rules, tables and
 * cases are written by people; what is longer than these bounds was not.
 */
public final class BoundedText {
  /** Bytes of a file of cards or cases; the largest that ships has a fiftieth of it. */
  public static final int LARGEST = 1 << 20;

  private static final int MOST_LINES = 20_000;

  /** The parser of cards takes time by the square of it. */
  private static final int LONGEST_LINE = 10_000;

  private BoundedText() {}

  /**
   * The text of a file in UTF-8.
   *
   * @param largest bytes; no more of the file is read
   * @throws FileNotFoundException if it is a folder, a device or a pipe
   * @throws java.nio.charset.CharacterCodingException if it is no text in UTF-8
   * @throws IOException if it is larger, or cannot be read
   */
  public static String read(Path file, int largest) throws IOException {
    if (!Files.exists(file)) {
      throw new NoSuchFileException(file.toString());
    }
    if (!Files.isRegularFile(file)) {
      throw new FileNotFoundException(file + " is no file that can be read to its end");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(largest + 1);
    }
    if (bytes.length > largest) {
      throw new IOException(file + " is larger than " + (largest >> 20) + " MiB");
    }
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  /** What is wrong with a text that has too many lines, or one that is too long. */
  static Optional<Problem> excess(String file, String text) {
    int line = 1;
    for (int from = 0; from < text.length(); line++) {
      int end = text.indexOf('\n', from);
      int to = end < 0 ? text.length() : end;
      if (to - from > LONGEST_LINE) {
        String message = "this line is longer than " + LONGEST_LINE + " characters";
        return Optional.of(new Problem("line-too-long", file, line, 1, message, "Divide it."));
      }
      if (line > MOST_LINES) {
        String message = "this file has more than " + MOST_LINES + " lines";
        String advice = "Divide it; one card a file reads best.";
        return Optional.of(new Problem("too-many-lines", file, line, 1, message, advice));
      }
      from = to + 1;
    }
    return Optional.empty();
  }
}
