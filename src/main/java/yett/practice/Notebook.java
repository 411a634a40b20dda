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
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.files.OwnFiles;

/**
 * What is kept of practice, in two files of the user's own (JSON Lines): how past exercises went,
 * and the one that is going on, so that nothing of it is lost. They stand beside the casebook and
 * not in it: what was made up must not count among what happened.
 */
public final class Notebook {
  private static final JsonMapper JSON = JsonMapper.shared();

  /** Bytes: more than anybody practises in a life. */
  private static final int LARGEST = 16 << 20;

  private final Path results;
  private final Path open;

  /**
   * @param folder made when something is first written
   */
  public Notebook(Path folder) {
    this.results = folder.resolve("practice.jsonl");
    this.open = folder.resolve("practice-open.jsonl");
  }

  /**
   * How an exercise can be had again.
   *
   * @param file of the test case; empty if it was drawn
   * @param area and level that were asked for; empty for any
   * @param course for whom and in which course; empty if it is nobody's
   */
  public record Begun(
      String ruleBase,
      String file,
      String name,
      String area,
      String level,
      String role,
      long seed,
      Optional<Result.Sitting> course) {
    public Begun {
      course = course == null ? Optional.empty() : course;
    }

    public Begun(
        String ruleBase,
        String file,
        String name,
        String area,
        String level,
        String role,
        long seed) {
      this(ruleBase, file, name, area, level, role, seed, Optional.empty());
    }

    /** The same for a trainee of a course. */
    public Begun of(Result.Sitting sitting) {
      return new Begun(ruleBase, file, name, area, level, role, seed, Optional.of(sitting));
    }
  }

  /** An exercise that was left, with all that happened in it. */
  public record Left(Begun begun, List<PracticeEntry> entries) {}

  public Path results() {
    return results;
  }

  public void begin(Begun begun) {
    delete();
    append(open, begun);
  }

  public void keep(PracticeEntry entry) {
    append(open, entry);
  }

  /** Ends the one that is going on. */
  public void finish(Result result) {
    append(results, result);
    delete();
  }

  /** Forgets the one that is going on. */
  public void delete() {
    try {
      Files.deleteIfExists(open);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + open, e);
    }
  }

  /** The exercise that was left, if there is one that can be read. */
  public Optional<Left> left() {
    List<String> lines = lines(open);
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    try {
      Begun begun = JSON.readValue(lines.get(0), Begun.class);
      return Optional.of(
          new Left(begun, read(lines.subList(1, lines.size()), PracticeEntry.class)));
    } catch (JacksonException e) {
      return Optional.empty(); // written by another version, or cut off in its first line
    }
  }

  public TraineeProgress progress() {
    return new TraineeProgress(read(lines(results), Result.class));
  }

  /** Lines that can be read: the last one may be cut off, when the power went. */
  private static <T> List<T> read(List<String> lines, Class<T> type) {
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

  private static List<String> lines(Path file) {
    try {
      return Files.exists(file)
          ? BoundedFile.text(file, LARGEST).lines().filter(l -> !l.isBlank()).toList()
          : List.of();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static void append(Path file, Object line) {
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
}
