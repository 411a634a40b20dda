package yett.interview;

import java.util.List;

/**
 * Answers that can hardly all be right, given the rule base.
 *
 * @param parts the answers, in their order
 * @param bits how much less probable they are together than each by itself, as a power of 2
 * @param weighed false if no set of causes allows the last of them: then it is kept in the case and
 *     not weighed
 */
public record Conflict(List<Part> parts, double bits, boolean weighed) {

  /**
   * @param event number of the event; 0 for a complaint
   */
  public record Part(long event, String check, String outcome) {}
}
