package yett.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to do next and what the choice was between.
 *
 * @param candidates checks that could be made, the best first
 * @param jobs the best order of repairs if nothing more were asked
 * @param expected expected minutes until the gate is back in service, following the advice; an
 *     estimate where the end of all checks and repairs is out of sight
 * @param repairingNow the same when repairing at once
 * @param findingOut whether no repair is worth trying before more is known; the candidates worth
 *     their cost then stand in the order of what they resolve for it, not of what they save
 * @param confirming whether the first check is asked to confirm or clear what the first repair is
 *     for, though repairing at once would be quicker on average
 */
public record Advice(
    Kind kind,
    List<Candidate> candidates,
    List<Job> jobs,
    double expected,
    double repairingNow,
    boolean findingOut,
    boolean confirming) {

  /** Without a check that is asked only to confirm. */
  public Advice(
      Kind kind,
      List<Candidate> candidates,
      List<Job> jobs,
      double expected,
      double repairingNow,
      boolean findingOut) {
    this(kind, candidates, jobs, expected, repairingNow, findingOut, false);
  }

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

  /** The same choice with a check as its outcome, because work for it has begun. */
  public Advice asking(String check) {
    Candidate chosen = candidate(check).orElse(new Candidate(check, 0, 0));
    boolean same = !candidates.isEmpty() && candidates.get(0).equals(chosen);
    return asking(chosen, same && confirming);
  }

  /** The same choice with a check before the repair that would have come next. */
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

  /** A check as the choice has it. */
  Optional<Candidate> candidate(String check) {
    return candidates.stream().filter(c -> c.check().equals(check)).findFirst();
  }

  /** The same choice with a repair as its outcome, because work for it has begun. */
  public Advice repairing(String repair) {
    List<Job> reordered = new ArrayList<>(jobs);
    reordered.removeIf(j -> j.repair().equals(repair));
    reordered.add(0, new Job(repair, 1));
    return new Advice(
        Kind.REPAIR, candidates, List.copyOf(reordered), expected, repairingNow, findingOut);
  }
}
