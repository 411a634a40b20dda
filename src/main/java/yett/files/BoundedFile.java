package yett.files;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Reads files that somebody else wrote, mostly text in UTF-8, with a limit on their size. It
 * refuses anything that has no end, such as a device or a pipe.
 */
public final class BoundedFile {
  private BoundedFile() {}

  /** The file is larger than its reader allows. */
  public static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1;

    private TooLarge(Path file) {
      super(file + " is larger than it may be");
    }
  }

  /** A line is longer than its reader allows. */
  public static final class LineTooLong extends IOException {
    private static final long serialVersionUID = 1;

    private LineTooLong(Path file) {
      super("a line of " + file + " is longer than it may be");
    }
  }

  /**
   * Reads a whole file.
   *
   * @param largest in bytes
   * @throws NoSuchFileException if there is none
   * @throws FileNotFoundException if it is a folder, a device or a pipe
   * @throws java.nio.charset.CharacterCodingException if it is not text in UTF-8
   * @throws TooLarge if it is larger
   */
  public static String text(Path file, int largest) throws IOException {
    byte[] bytes = bytes(file, largest);
    return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
  }

  /** Reads a whole file that is not text, such as a picture; fails as {@link #text} does. */
  public static byte[] bytes(Path file, int largest) throws IOException {
    check(file, largest);
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(largest + 1);
    }
    if (bytes.length > largest) { // it has grown, or has no known size
      throw new TooLarge(file);
    }
    return bytes;
  }

  /**
   * Reads a file line by line, if it may be too large to be held in memory; fails as {@link #text}
   * does.
   *
   * @param largest in bytes
   * @param longest characters of a line
   */
  public static Lines lines(Path file, long largest, int longest) throws IOException {
    check(file, largest);
    return new Lines(file, largest, longest);
  }

  private static void check(Path file, long largest) throws IOException {
    if (!Files.exists(file)) {
      throw new NoSuchFileException(file.toString());
    }
    if (!Files.isRegularFile(file)) {
      throw new FileNotFoundException(file + " cannot be read to its end");
    }
    if (Files.size(file) > largest) {
      throw new TooLarge(file);
    }
  }

  /** The lines of a file, one after the other. */
  public static final class Lines implements Closeable {
    private final Path file;
    private final long largest;
    private final int longest;
    private final BufferedReader reader;
    private long read;

    private Lines(Path file, long largest, int longest) throws IOException {
      this.file = file;
      this.largest = largest;
      this.longest = longest;
      this.reader = Files.newBufferedReader(file);
    }

    /**
     * The next line without its end; null after the last.
     *
     * @throws LineTooLong if it is longer than allowed
     * @throws TooLarge if the file has grown
     */
    public String next() throws IOException {
      var line = new StringBuilder();
      int c = reader.read();
      if (c < 0) {
        return null;
      }
      for (; c >= 0 && c != '\n'; c = reader.read()) {
        line.append((char) c);
        if (line.length() > longest) {
          throw new LineTooLong(file);
        }
      }
      read += line.length() + 1L;
      if (read > largest + 1) { // the last line may have no end
        throw new TooLarge(file);
      }
      return line.toString();
    }

    @Override
    public void close() throws IOException {
      reader.close();
    }
  }
}
