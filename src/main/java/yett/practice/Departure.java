package yett.practice;

/**
 * Where a trainee left the best path.
 *
 * @param minute of the exercise
 * @param chose what was done, in words
 * @param best what the plan would have done next, knowing the same
 * @param reason why that was better
 * @param lost minutes that this lost on average; negative if the plan put no figure on it
 */
public record Departure(double minute, String chose, String best, String reason, double lost) {
  /** Less than this is as good as the best. */
  public static final double WORTH_TELLING = 1;
}
