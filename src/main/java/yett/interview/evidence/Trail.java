package yett.interview.evidence;

import java.util.List;

/**
 * The history of the belief: each piece of evidence in order, and the chance of every cause after
 * it.
 *
 * @param prior chance of each cause before any evidence, in the order of the model
 * @param moves the pieces of evidence
 */
public record Trail(double[] prior, List<Move> moves) {

  /**
   * One piece of evidence.
   *
   * @param event number of the event, 0 for complaints taken together
   * @param subject id of the check or repair, or "retest"
   * @param words what it was taken to mean
   * @param also other outcomes that are true at once
   * @param reason why it was taken so
   * @param source of the likelihoods
   * @param before chance of each cause before it
   * @param after chance of each cause after it
   */
  public record Move(
      long event,
      String subject,
      String words,
      List<String> also,
      String reason,
      String source,
      double[] before,
      double[] after) {

    /** A piece of evidence with one meaning. */
    public Move(
        long event,
        String subject,
        String words,
        String reason,
        String source,
        double[] before,
        double[] after) {
      this(event, subject, words, List.of(), reason, source, before, after);
    }
  }
}
