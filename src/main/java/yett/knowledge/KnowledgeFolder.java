package yett.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * Reads the files of a rule base from a folder that may come from anybody: nothing outside the
 * folder, and no more than memory can hold.
 */
public final class KnowledgeFolder {
  /** Largest file (bytes); the largest in the shipped rule base has a fiftieth of it. */
  static final int LARGEST = 1 << 20;

  public static final int MOST_FILES = 5_000;

  /** Largest total of all files (characters); the shipped rule base has a tenth of it. */
  private static final int LARGEST_FOLDER = 16 << 20;

  /** Most files and folders of any kind that are visited. */
  private static final int MOST_SEEN = 100_000;

  private static final int DEEPEST = 20;

  private final Path folder;

  public KnowledgeFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * The contents of a folder.
   *
   * @param texts by name
   * @param refused by name, why a file is not read
   */
  public record Content(SortedMap<String, String> texts, SortedMap<String, Problem> refused) {}

  /**
   * The texts of all files.
   *
   * @throws KnowledgeException if it is no readable folder, or has files that are refused
   */
  SortedMap<String, String> files() {
    Content content = content();
    if (!content.refused().isEmpty()) {
      throw new KnowledgeException(List.copyOf(content.refused().values()));
    }
    return content.texts();
  }

  /**
   * Reads all files.
   *
   * @throws KnowledgeException if it is no folder that can be read as a rule base
   */
  public Content content() {
    if (!Files.isDirectory(folder)) {
      throw unfit(
          "no-folder",
          "there is no folder \"" + folder + "\"",
          "Give the folder that holds the cards, such as ./knowledge.");
    }
    Content content = new Content(new TreeMap<>(), new TreeMap<>());
    try {
      long all = 0;
      for (Path path : paths()) {
        read(name(path), content);
        all += content.texts().getOrDefault(name(path), "").length();
        if (all > LARGEST_FOLDER) {
          throw unfit(
              "too-large",
              "the files here are larger than " + (LARGEST_FOLDER >> 20) + " MiB together",
              "Give the folder that holds the cards and nothing else.");
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the rule base in " + folder, e);
    }
    return content;
  }

  /** The name of a file relative to the folder, with forward slashes. */
  public String name(Path path) {
    return folder.relativize(path).toString().replace('\\', '/');
  }

  /**
   * Reads one file again and updates the content; a file that no longer exists, or is not a file,
   * is removed from it.
   */
  public void read(String name, Content content) throws IOException {
    Path path = folder.resolve(name);
    content.texts().remove(name);
    content.refused().remove(name);
    if (!Files.isRegularFile(path)) {
      return;
    }
    if (inside(path)) {
      text(path, name, content);
    } else {
      refuse(
          content,
          "outside",
          name,
          "this is a link to a file outside the folder",
          "Put a copy of the file here.");
    }
  }

  private List<Path> paths() throws IOException {
    AtomicInteger seen = new AtomicInteger();
    try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
      List<Path> paths =
          all.takeWhile(p -> seen.incrementAndGet() <= MOST_SEEN)
              .filter(p -> KnowledgeSource.wanted(name(p)))
              .filter(Files::isRegularFile)
              .limit(MOST_FILES + 1L)
              .sorted()
              .toList();
      if (paths.size() > MOST_FILES || seen.get() > MOST_SEEN) {
        throw unfit(
            "too-many-files",
            "there are more than "
                + (paths.size() > MOST_FILES ? MOST_FILES : MOST_SEEN)
                + " files here",
            "Give the folder that holds the cards and nothing else.");
      }
      return paths;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Whether a path stays inside the folder. Links within the folder are allowed. */
  private boolean inside(Path path) throws IOException {
    return path.toRealPath().startsWith(folder.toRealPath());
  }

  private static void text(Path path, String name, Content content) throws IOException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(path)) {
      bytes = in.readNBytes(LARGEST + 1);
    }
    if (bytes.length > LARGEST) {
      refuse(
          content,
          "too-large",
          name,
          "this file is larger than " + (LARGEST >> 20) + " MiB",
          "Divide it; one card a file reads best.");
      return;
    }
    try {
      String text =
          KnowledgeSource.charset(name).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      boolean lines = name.endsWith(".drl") || name.endsWith(".csv");
      Optional<Problem> excess = lines ? LineBounds.excess(name, text) : Optional.empty();
      if (excess.isPresent()) {
        content.refused().put(name, excess.get());
      } else {
        content.texts().put(name, text);
      }
    } catch (CharacterCodingException e) {
      refuse(content, "not-utf-8", name, "this is not text in UTF-8", "Save the file as UTF-8.");
    }
  }

  private static void refuse(
      Content content, String kind, String name, String message, String advice) {
    content.refused().put(name, new Problem(kind, name, 0, 0, message, advice));
  }

  private KnowledgeException unfit(String kind, String message, String advice) {
    return new KnowledgeException(
        List.of(new Problem(kind, folder.toString(), 0, 0, message, advice)));
  }
}
