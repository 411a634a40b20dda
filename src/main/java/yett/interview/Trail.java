package yett.interview;

import java.util.List;

/**
 * How the belief came to be what it is: what came in, in order, and where it left every cause.
 *
 * @param prior chance of each cause before anything was known, in the order of the model
 * @param moves what moved it
 */
public record Trail(double[] prior, List<Move> moves) {

  /**
   * @param event number of the event, 0 for complaints taken together
   * @param subject id of the check or repair, or "retest"
   * @param words what it was taken to mean
   * @param reason where that meaning comes from
   * @param source of the likelihoods
   * @param before chance of each cause before
   * @param after and after
   */
  public record Move(
      long event,
      String subject,
      String words,
      String reason,
      String source,
      double[] before,
      double[] after) {}
}
