package yett.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The next check or repair that the plan proposes, with the alternatives.
 *
 * @param candidates checks that could be made, the best first
 * @param jobs the best order of repairs if nothing more were asked
 * @param expected expected minutes until the gate is back in service, following the advice; an
 *     estimate where the search does not reach the end
 * @param repairingNow expected minutes when repairing at once
 * @param findingOut whether no repair is worth trying before more is known; the candidates worth
 *     their cost are then sorted by what they resolve for it, not by what they save
 * @param confirming whether the first check is asked to confirm or clear the suspicion behind the
 *     first repair, though repairing at once would be quicker on average
 */
public record Advice(
    Kind kind,
    List<Candidate> candidates,
    List<Job> jobs,
    double expected,
    double repairingNow,
    boolean findingOut,
    boolean confirming) {

  /** Advice without a check that only confirms. */
  public Advice(
      Kind kind,
      List<Candidate> candidates,
      List<Job> jobs,
      double expected,
      double repairingNow,
      boolean findingOut) {
    this(kind, candidates, jobs, expected, repairingNow, findingOut, false);
  }

  /** The kind of work that comes next. */
  public enum Kind {
    ASK,
    REPAIR,
    /** No check is worth its cost and no repair is worth trying. */
    NOTHING_LEFT
  }

  /**
   * A check.
   *
   * @param minutes its cost now, with changes of set-up and the penalty for hazards
   * @param saves average minutes saved by beginning with it instead of repairing at once, including
   *     what may be asked after it; negative if it costs more than it saves
   */
  public record Candidate(String check, double minutes, double saves) {}

  /**
   * A repair.
   *
   * @param chance that it is reached because those before it did not cure
   */
  public record Job(String repair, double chance) {}

  /** A copy that proposes this check, because work for it has begun. */
  public Advice asking(String check) {
    Candidate chosen = candidate(check).orElse(new Candidate(check, 0, 0));
    boolean same = !candidates.isEmpty() && candidates.get(0).equals(chosen);
    return asking(chosen, same && confirming);
  }

  /** A copy that proposes a check before the repair that would have come next. */
  Advice confirmingBy(Candidate check) {
    return asking(check, true);
  }

  private Advice asking(Candidate first, boolean toConfirm) {
    List<Candidate> reordered = new ArrayList<>(candidates);
    reordered.removeIf(c -> c.check().equals(first.check()));
    reordered.add(0, first);
    return new Advice(
        Kind.ASK, List.copyOf(reordered), jobs, expected, repairingNow, findingOut, toConfirm);
  }

  /** The candidate for a check, if it is one. */
  Optional<Candidate> candidate(String check) {
    return candidates.stream().filter(c -> c.check().equals(check)).findFirst();
  }

  /** A copy that proposes this repair, because work for it has begun. */
  public Advice repairing(String repair) {
    List<Job> reordered = new ArrayList<>(jobs);
    reordered.removeIf(j -> j.repair().equals(repair));
    reordered.add(0, new Job(repair, 1));
    return new Advice(
        Kind.REPAIR, candidates, List.copyOf(reordered), expected, repairingNow, findingOut);
  }
}
