package yett.console;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import yett.files.OwnFiles;
import yett.files.WholeFile;

/**
 * Commands of earlier days, for the arrow keys, in a file that only its owner can read. If the file
 * cannot be read or written, there is no history; nothing depends on it.
 */
public final class CommandHistory {
  /** A settled choice: more than anybody steps through. */
  public static final int MOST = 500;

  private final Path file;

  public CommandHistory(Path file) {
    this.file = file;
  }

  /** The latest last. */
  public List<String> lines() {
    try {
      if (!Files.exists(file)) {
        return List.of();
      }
      List<String> all = Files.readAllLines(file, StandardCharsets.UTF_8);
      List<String> latest = all.subList(Math.max(0, all.size() - MOST), all.size());
      if (all.size() > 2 * MOST) {
        WholeFile.replaceOwn(file, text(latest).getBytes(StandardCharsets.UTF_8));
      }
      return List.copyOf(latest);
    } catch (IOException e) {
      return List.of();
    }
  }

  public void add(String line) {
    try {
      OwnFiles.folder(file.toAbsolutePath().getParent());
      try (var channel = OwnFiles.open(file, StandardOpenOption.APPEND)) {
        ByteBuffer bytes = StandardCharsets.UTF_8.encode(text(List.of(line)));
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
      }
    } catch (IOException e) {
      // The next start has no history.
    }
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines) + "\n";
  }
}
