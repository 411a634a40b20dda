package yett.command.common;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import yett.casebook.DataDirectory;
import yett.files.DiskRoom;
import yett.files.OwnFiles;

/**
 * Notes the program's own mistakes and the errors of libraries in a file for the developers,
 * because nobody at a gate can do anything about them. Only its owner can read the file, as a
 * mistake may quote an answer. The file and its predecessor together stay below a megabyte.
 */
public final class Mistakes {
  public static final int MOST_OF_ONE = 64 << 10;
  public static final int MOST = 512 << 10;

  private final Path file;

  public Mistakes(Path folder) {
    this.file = folder.resolve("mistakes.log");
  }

  public static Mistakes ofUser() {
    return new Mistakes(DataDirectory.ofUser(System.getenv()).data());
  }

  /** Notes a mistake; returns the line that tells the person about it. */
  public String told(Throwable mistake) {
    try {
      note("mistake", trace(mistake));
      return "The program made a mistake and had to stop here. Your answers are saved: a"
          + " case goes on with resume, anything else with the same command. The details are noted for the owners of the project in "
          + file
          + ".";
    } catch (IOException | RuntimeException e) {
      return "The program made a mistake and had to stop here ("
          + mistake.getClass().getSimpleName()
          + "). Your answers are saved: a case goes on with resume, anything else with the same"
          + " command. It could not be noted in "
          + file
          + ".";
    }
  }

  /**
   * Notes a line that a library printed. What it means for the person is said by the code that uses
   * the library.
   */
  public void printed(String line) {
    try {
      note("printed", line);
    } catch (IOException | RuntimeException e) {
      // There is nowhere left to report it.
    }
  }

  public synchronized void note(String kind, String words) throws IOException {
    byte[] text = text(kind, words).getBytes(StandardCharsets.UTF_8);
    if (!DiskRoom.besidesAnswers(file, text.length)) {
      throw new IOException("the disk is nearly full");
    }
    OwnFiles.folder(file.toAbsolutePath().getParent());
    if (Files.exists(file) && Files.size(file) + text.length > MOST) {
      Files.move(
          file, file.resolveSibling("mistakes-before.log"), StandardCopyOption.REPLACE_EXISTING);
    }
    try (var channel = OwnFiles.open(file, StandardOpenOption.APPEND)) {
      ByteBuffer bytes = ByteBuffer.wrap(text);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
    }
  }

  private static String trace(Throwable mistake) {
    StringWriter text = new StringWriter();
    mistake.printStackTrace(new PrintWriter(text, true));
    return "Java %s, %s%n%s".formatted(Runtime.version(), System.getProperty("os.name"), text);
  }

  private static String text(String kind, String words) {
    String some = words.length() <= MOST_OF_ONE ? words : words.substring(0, MOST_OF_ONE);
    return Instant.now() + " " + kind + ": " + some + "\n";
  }
}
