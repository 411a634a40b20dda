package yett.plan;

import java.util.List;

/**
 * What to do next and what the choice was between.
 *
 * @param candidates checks that could be made, the best first
 * @param jobs the best order of repairs if nothing more were asked
 * @param expected expected minutes until the gate is back in service, following the advice; an
 *     estimate where the end of all checks and repairs is out of sight
 * @param repairingNow the same when repairing at once
 */
public record Advice(
    Kind kind, List<Candidate> candidates, List<Job> jobs, double expected, double repairingNow) {

  /** What comes next. */
  public enum Kind {
    ASK,
    REPAIR,
    /** No check is worth its cost and no repair is worth trying. */
    NOTHING_LEFT
  }

  /**
   * A check.
   *
   * @param minutes what it costs now, with changes of set-up and the weight of hazards
   * @param saves minutes that beginning with it saves on average against repairing at once, what
   *     may be asked after it included; negative if it does not
   */
  public record Candidate(String check, double minutes, double saves) {}

  /**
   * A repair.
   *
   * @param chance that its turn comes, because those before did not cure
   */
  public record Job(String repair, double chance) {}
}
