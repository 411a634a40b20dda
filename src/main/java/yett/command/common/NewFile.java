package yett.command.common;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import yett.console.StandardStreams;
import yett.files.WholeFile;

/** A file named by the user for output. An existing file is never overwritten. */
public final class NewFile {
  private NewFile() {}

  /**
   * @throws UsageException if the file exists already, or cannot be created
   */
  public static Path named(String name) {
    try {
      Path file = Path.of(name);
      if (name.isBlank() || Files.exists(file)) {
        throw new UsageException(name + " exists already. Name another file, or move it away.");
      }
      return file;
    } catch (InvalidPathException e) {
      throw new UsageException(name + " cannot be the name of a file. Name another one.");
    }
  }

  /** Writes the file whole or not at all, and says so. */
  public static void write(Path file, String text, StandardStreams output) {
    keep(file, () -> WholeFile.create(file, text), output);
  }

  public static void write(Path file, byte[] content, StandardStreams output) {
    keep(file, () -> WholeFile.create(file, content), output);
  }

  private interface Writing {
    void write() throws IOException;
  }

  private static void keep(Path file, Writing writing, StandardStreams output) {
    try {
      writing.write();
      output.print(file + " is written.");
    } catch (IOException e) {
      throw new UncheckedIOException(
          file
              + ": it cannot be written. See that its folder is there and has room, or name"
              + " another file.",
          e);
    }
  }
}
