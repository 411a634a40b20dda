package yett.practice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Stores a user's practice in two files (JSON Lines): the results of past exercises, and the
 * exercise in progress, so that nothing of it is lost. They are next to the casebook and not in it,
 * because invented cases must not count among real ones.
 */
public final class Notebook {
  private final JsonLines results;
  private final JsonLines open;

  /**
   * @param folder created when something is first written
   */
  public Notebook(Path folder) {
    this.results = new JsonLines(folder.resolve("practice.jsonl"));
    this.open = new JsonLines(folder.resolve("practice-open.jsonl"));
  }

  /**
   * What is needed to make an exercise again.
   *
   * @param file of the test case; empty if it was drawn
   * @param area and level that were asked for; empty for any
   * @param course which trainee and which course; empty if it belongs to none
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

  /** An unfinished exercise, with everything that happened in it. */
  public record Left(Begun begun, List<PracticeEntry> entries) {}

  public Path results() {
    return results.file();
  }

  public void begin(Begun begun) {
    delete();
    open.append(begun);
  }

  public void keep(PracticeEntry entry) {
    open.append(entry);
  }

  /** Stores the result and ends the exercise in progress. */
  public void finish(Result result) {
    results.append(result);
    delete();
  }

  /** Deletes the exercise in progress. */
  public void delete() {
    open.delete();
  }

  /** The unfinished exercise, if there is one that can be read. */
  public Optional<Left> left() {
    List<String> lines = open.lines();
    // Empty if another version wrote it, or if its first line was cut off.
    return JsonLines.read(lines.stream().limit(1).toList(), Begun.class).stream()
        .findFirst()
        .map(
            begun ->
                new Left(
                    begun, JsonLines.read(lines.subList(1, lines.size()), PracticeEntry.class)));
  }

  public TraineeProgress progress() {
    return new TraineeProgress(JsonLines.read(results.lines(), Result.class));
  }
}
