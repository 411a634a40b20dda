package yett.practice;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What is kept of practice, in two files of the user's own (JSON Lines): how past exercises went,
 * and the one that is going on, so that nothing of it is lost. They stand beside the casebook and
 * not in it: what was made up must not count among what happened.
 */
public final class Notebook {
  private final JsonLines results;
  private final JsonLines open;

  /**
   * @param folder made when something is first written
   */
  public Notebook(Path folder) {
    this.results = new JsonLines(folder.resolve("practice.jsonl"));
    this.open = new JsonLines(folder.resolve("practice-open.jsonl"));
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
    return results.file();
  }

  public void begin(Begun begun) {
    delete();
    open.append(begun);
  }

  public void keep(PracticeEntry entry) {
    open.append(entry);
  }

  /** Ends the one that is going on. */
  public void finish(Result result) {
    results.append(result);
    delete();
  }

  /** Forgets the one that is going on. */
  public void delete() {
    open.delete();
  }

  /** The exercise that was left, if there is one that can be read. */
  public Optional<Left> left() {
    List<String> lines = open.lines();
    // Nothing if it was written by another version, or cut off in its first line.
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
