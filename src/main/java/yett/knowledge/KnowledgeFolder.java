package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads the files of a rule base from a folder, whoever it comes from: nothing outside the folder,
 * and no more than can be held.
 */
final class KnowledgeFolder {
  /** Bytes; the largest card file that ships has a fiftieth of it. */
  static final int LARGEST = 1 << 20;

  static final int MOST_FILES = 5_000;
  private static final int DEEPEST = 20;

  private final Path folder;
  private final List<Problem> problems = new ArrayList<>();

  KnowledgeFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * @throws KnowledgeException if it is no readable folder, or has files that are refused
   */
  SortedMap<String, String> files() {
    if (!Files.isDirectory(folder)) {
      problem(
          "no-folder",
          folder.toString(),
          "there is no folder \"" + folder + "\"",
          "Give the folder that holds the cards, such as ./knowledge.");
      throw new KnowledgeException(problems);
    }
    SortedMap<String, String> files = new TreeMap<>();
    try {
      for (Path path : paths()) {
        String name = folder.relativize(path).toString().replace('\\', '/');
        if (inside(path, name)) {
          text(path, name, files);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the rule base in " + folder, e);
    }
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems);
    }
    return files;
  }

  private List<Path> paths() throws IOException {
    try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
      List<Path> paths =
          all.filter(
                  p -> KnowledgeSource.wanted(folder.relativize(p).toString().replace('\\', '/')))
              .filter(Files::isRegularFile)
              .limit(MOST_FILES + 1L)
              .sorted()
              .toList();
      if (paths.size() > MOST_FILES) {
        problem(
            "too-many-files",
            folder.toString(),
            "there are more than " + MOST_FILES + " files here",
            "Give the folder that holds the cards and nothing else.");
        throw new KnowledgeException(problems);
      }
      return paths;
    }
  }

  /** A link may lead elsewhere in the folder, not out of it. */
  private boolean inside(Path path, String name) throws IOException {
    if (path.toRealPath().startsWith(folder.toRealPath())) {
      return true;
    }
    problem(
        "outside",
        name,
        "this is a link to a file outside the folder",
        "Put a copy of the file here.");
    return false;
  }

  private void text(Path path, String name, SortedMap<String, String> files) throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(LARGEST + 1);
    }
    if (bytes.length > LARGEST) {
      problem(
          "too-large",
          name,
          "this file is larger than " + (LARGEST >> 20) + " MiB",
          "Divide it; one card a file reads best.");
      return;
    }
    try {
      files.put(
          name, StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      problem("not-utf-8", name, "this is not text in UTF-8", "Save the file as UTF-8.");
    }
  }

  private void problem(String kind, String file, String message, String advice) {
    problems.add(new Problem(kind, file, 0, 0, message, advice));
  }
}
