package yett.practice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.files.OwnFiles;

/**
 * A file of the user with a JSON value on each line. Values are appended and are on disk at once.
 */
record JsonLines(Path file) {
  private static final JsonMapper JSON = JsonMapper.shared();

  /** In bytes; more than anybody practises in a lifetime. */
  private static final int LARGEST = 16 << 20;

  List<String> lines() {
    try {
      return Files.exists(file)
          ? BoundedFile.text(file, LARGEST).lines().filter(l -> !l.isBlank()).toList()
          : List.of();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The lines that can be read. The last one may have been cut off by a power failure. */
  static <T> List<T> read(List<String> lines, Class<T> type) {
    List<T> all = new ArrayList<>();
    for (String line : lines) {
      try {
        all.add(JSON.readValue(line, type));
      } catch (JacksonException e) {
        continue;
      }
    }
    return all;
  }

  void append(Object line) {
    try {
      OwnFiles.folder(file.getParent());
      boolean cutOff =
          Files.exists(file) && Files.size(file) > 0 && !Files.readString(file).endsWith("\n");
      String text = (cutOff ? "\n" : "") + JSON.writeValueAsString(line) + "\n";
      var bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      try (var channel = OwnFiles.open(file, StandardOpenOption.APPEND, StandardOpenOption.SYNC)) {
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  void delete() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + file, e);
    }
  }
}
