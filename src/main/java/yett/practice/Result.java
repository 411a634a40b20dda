package yett.practice;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * The result of an exercise: one line of the file that is kept.
 *
 * @param putRight whether nothing was wrong with the gate any more, and it was proved
 * @param minutes of the cards for what was done
 * @param cost in money: these minutes and the parts
 * @param planMinutes what the plan needed on the same gate with the same knowledge
 * @param planCost the same in money
 * @param parts price of all parts that were fitted
 * @param guesses repairs that were made on suspicion; see {@link Workbench#guesses}. Empty if an
 *     earlier version did not count them
 * @param course which trainee and which course; empty if it belongs to none
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

  /** In minutes or money; nobody practises so long or fits so much. */
  private static final double MOST = 1e7;

  /** Replaces values that an earlier version did not write. */
  public Result {
    parts = parts == null ? 0.0 : parts;
    guesses = guesses == null ? Optional.empty() : guesses;
    course = course == null ? Optional.empty() : course;
  }

  /**
   * A trainee at an exercise of a course.
   *
   * @param number of the exercise in the course, from 1
   * @param ruleBase version of the cards, because only the same version gives the same gate
   */
  public record Sitting(String course, String trainee, int number, String ruleBase) {
    private boolean isPossible() {
      return course != null && trainee != null && ruleBase != null;
    }
  }

  /** Whether the values are possible for an exercise. */
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

  /** The trainee's minutes for each minute of the plan. */
  public double ratio() {
    return minutes / Math.max(1, planMinutes);
  }
}
