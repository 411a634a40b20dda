package yett.interview.evidence;

import java.util.List;

/**
 * Answers that are unlikely to be all right.
 *
 * @param parts the answers, in their order
 * @param bits how much less probable they are together than if they were independent, as a power of
 *     2
 * @param weighed false if no set of causes allows the last of them; it is then kept in the case but
 *     not used as evidence
 */
public record Conflict(List<Part> parts, double bits, boolean weighed) {

  /**
   * @param event number of the event; 0 for a complaint
   * @param also other outcomes that were said to be true at once
   */
  public record Part(long event, String check, String outcome, List<String> also) {}
}
