package yett.practice;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * How an exercise went: one line of what is kept over sessions.
 *
 * @param putRight whether nothing was wrong with the gate any more, and it was proved
 * @param minutes of the cards for what was done
 * @param cost money: these minutes and the parts
 * @param planMinutes what the plan needed on the same gate, knowing no more
 * @param planCost the same in money
 * @param parts price of all parts that were fitted
 * @param guesses repairs that were made on suspicion; see {@link Workbench#guesses}; empty where an
 *     earlier version did not count them
 * @param course for whom and in which course it was; empty if it was nobody's
 */
public record Result(
    Instant at,
    String exercise,
    long seed,
    String area,
    String level,
    boolean putRight,
    String ended,
    double minutes,
    double cost,
    double planMinutes,
    double planCost,
    int slips,
    int hints,
    Double parts,
    Optional<Integer> guesses,
    Optional<Sitting> course) {

  /** Minutes, or money; nobody practises so long or fits so much. */
  private static final double MOST = 1e7;

  /** What an earlier version did not write is nothing. */
  public Result {
    parts = parts == null ? 0.0 : parts;
    guesses = guesses == null ? Optional.empty() : guesses;
    course = course == null ? Optional.empty() : course;
  }

  /**
   * A trainee at an exercise of a course.
   *
   * @param number of the exercise in the course, from 1
   * @param ruleBase version of the cards: only under the same one is the gate the same
   */
  public record Sitting(String course, String trainee, int number, String ruleBase) {
    private boolean isPossible() {
      return course != null && trainee != null && ruleBase != null;
    }
  }

  /** Whether an exercise can have gone like this. */
  public boolean isPossible() {
    return at != null
        && exercise != null
        && ended != null
        && slips >= 0
        && hints >= 0
        && guesses.filter(g -> g < 0).isEmpty()
        && DoubleStream.of(minutes, cost, planMinutes, planCost, parts)
            .allMatch(d -> d >= 0 && d <= MOST)
        && course.filter(s -> !s.isPossible()).isEmpty();
  }

  /** Minutes for each minute of the plan. */
  public double ratio() {
    return minutes / Math.max(1, planMinutes);
  }
}
