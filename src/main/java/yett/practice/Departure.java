package yett.practice;

/**
 * A place where a trainee departed from the best path.
 *
 * @param minute of the exercise
 * @param chose what was done, in words
 * @param best what the plan would have done next with the same knowledge
 * @param reason why that was better
 * @param lost minutes that this lost on average; negative if the plan gives no figure
 */
public record Departure(double minute, String chose, String best, String reason, double lost) {
  /** In minutes; a choice that loses less is as good as the best. */
  public static final double WORTH_TELLING = 1;
}
