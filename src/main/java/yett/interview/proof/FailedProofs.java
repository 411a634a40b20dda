package yett.interview.proof;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.interview.event.Event;
import yett.interview.moment.Present;
import yett.interview.setup.SetUpSteps;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * The proofs that failed and have not passed since. The gate is out of use until they pass, and the
 * repair that they point to comes next.
 */
public final class FailedProofs {
  /**
   * Share of a cause's cases in which a proof has to fail before a failure points to the cause
   * (considered judgement).
   */
  private static final double POINTS_TO = 0.25;

  /** Share of the total chance from which one repair stands out. */
  private static final double MOST = 0.5;

  private final Present present;
  private final List<Check> failed;
  private final SetUpSteps steps;

  /**
   * @param proofs the proofs that this gate needs
   */
  public FailedProofs(Present present, List<Check> proofs, SetUpSteps steps) {
    this.present = present;
    this.steps = steps;
    this.failed =
        proofs.stream()
            .filter(p -> latest(p).filter(a -> a.answer().is(Check.FAIL)).isPresent())
            .toList();
  }

  /** Whether no failed proof stands. */
  public boolean isEmpty() {
    return failed.isEmpty();
  }

  /** The repair that a failed proof points to most; empty if something was repaired since. */
  public Optional<Step> repair() {
    return failed.stream()
        .filter(p -> !present.isMendedSince(latest(p).orElseThrow().event()))
        .flatMap(p -> next(p).stream())
        .findFirst()
        .map(r -> steps.mend(r, Optional.empty(), Occasion.of(Occasion.Kind.FAILED_PROOF)));
  }

  /** What the proof found is put right where it was found, if a repair is there for just that. */
  private Optional<Repair> next(Check proof) {
    List<Repair> repairs = pointsTo(proof).toList();
    return repairs.stream()
        .filter(r -> r.putsRight().contains(proof.id()))
        .findFirst()
        .or(() -> likeliest(repairs));
  }

  /**
   * The likeliest of the repairs that a proof points to. A proof that almost any fault makes fail,
   * such as a plain run, points only to repairs of suspected causes.
   */
  private Optional<Repair> likeliest(List<Repair> repairs) {
    double all = repairs.stream().mapToDouble(present::chance).sum();
    return repairs.stream()
        .max(Comparator.comparingDouble(present::chance))
        .filter(
            r ->
                present.chance(r) >= present.base().planning().suspicion()
                    || present.chance(r) >= MOST * all);
  }

  private Optional<CaseState.Answered> latest(Check proof) {
    return present.state().latest(proof.id());
  }

  private Stream<Repair> pointsTo(Check proof) {
    return pointsTo(present.base(), proof)
        .filter(r -> !present.unavailable().contains(r.id()))
        .filter(r -> !present.state().work().declined().containsKey(r.id()))
        .filter(r -> !isDoneAfterFailure(r, proof));
  }

  /**
   * Whether this repair was done after the proof began to fail. The proof still fails, so it was
   * not the right repair.
   */
  private boolean isDoneAfterFailure(Repair repair, Check proof) {
    long firstFailure = Long.MAX_VALUE;
    for (CaseState.Answered a : present.state().answers()) {
      if (a.check().equals(proof.id())) {
        firstFailure =
            a.answer().is(Check.PASS)
                ? Long.MAX_VALUE
                : a.answer().is(Check.FAIL) ? Math.min(firstFailure, a.event()) : firstFailure;
      }
    }
    long since = firstFailure;
    return present.state().work().deeds().stream()
        .anyMatch(
            d ->
                d.number() > since
                    && d.event() instanceof Event.Repaired r
                    && r.done()
                    && r.repair().equals(repair.id()));
  }

  /** The repairs that a failure of this proof justifies, the likeliest first. */
  public static Stream<Repair> pointsTo(RuleBase base, Check proof) {
    return base.repairs().values().stream()
        .filter(r -> worth(r, proof) >= POINTS_TO)
        .sorted(Comparator.comparingDouble((Repair r) -> -worth(r, proof)));
  }

  /**
   * Chance that the proof failed because of a cause that this repair removes, if the cause is
   * present, times the chance that the repair cures it; 1 if it puts right what the proof found.
   */
  private static double worth(Repair repair, Check proof) {
    if (repair.putsRight().contains(proof.id())) {
      return 1;
    }
    int fail = proof.indexOf(Check.FAIL);
    return repair.removes().entrySet().stream()
        .filter(e -> proof.likelihood().containsKey(e.getKey()))
        .mapToDouble(e -> e.getValue() * proof.likelihood().get(e.getKey())[fail])
        .max()
        .orElse(0);
  }
}
