package yett.replay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Expectation;

/**
 * Answers from a case file, as long as they still apply. The file describes the gate as found, so
 * an answer is not used if a repair has changed what it depends on.
 */
public final class Witness implements Respondent {
  /** Chance of removing a cause below which a repair counts as leaving it. */
  private static final double REMOVES = 0.5;

  /** The same limit where the file names another repair as the right one for the cause. */
  private static final double REMOVES_AS_WELL = 0.8;

  private static final double HALF = 0.5;

  /** Chance below which a cause counts as not showing on a check. */
  private static final double SHOWS = 0.1;

  private final RecordedCase recorded;
  private final RuleBase base;
  private final Map<String, Integer> asked = new HashMap<>();
  private final Set<String> remaining = new HashSet<>();
  private final Set<String> removed = new HashSet<>();
  private int retests;

  public Witness(RecordedCase recorded, RuleBase base) {
    this.recorded = recorded;
    this.base = base;
    recorded.truth().ifPresent(remaining::addAll);
  }

  @Override
  public Said answer(
      Check check, Optional<Expectation> usual, Function<Answer, Optional<String>> meaning) {
    RepeatedAnswer<Answer> told = recorded.answers().get(check.id());
    if (told == null || (!told.inOrder() && isFailureOutdated(check))) {
      return unsaid(check);
    }
    Optional<Answer> left = left(check, told);
    if (left.isPresent()) {
      return Said.told(left.get());
    }
    int turn = asked.getOrDefault(check.id(), 0);
    boolean changed =
        (turn == 0 || !told.inOrder()) && changed(check, told.turns().get(0), meaning);
    if (changed && !told.inOrder()) {
      return afterRepair(check);
    }
    turn = changed ? 1 : turn;
    asked.put(check.id(), turn + 1);
    return told.turn(turn).map(Said::told).orElseGet(() -> unsaid(check));
  }

  /** Of several outcomes told once for all times, those that repairs have left. */
  private Optional<Answer> left(Check check, RepeatedAnswer<Answer> told) {
    List<String> all = told.turns().get(0).choices();
    List<String> left = all.stream().filter(o -> !isOutdated(check, o)).toList();
    return told.inOrder() || all.size() < 2 || left.isEmpty()
        ? Optional.empty()
        : Optional.of(Answer.Chosen.of(check, left));
  }

  /**
   * The answer to a check after its recorded answer no longer applies: ordinary if no remaining
   * cause shows on it, otherwise unknown.
   */
  private Said afterRepair(Check check) {
    boolean shows = remaining.stream().anyMatch(c -> shows(check, c) >= SHOWS);
    return shows
        ? Said.assumed(
            new Answer.CannotTell(),
            "the file tells \"" + check.id() + "\" from before the repair that changed it")
        : chosen(check.outcomes().get(0).id());
  }

  private static Said chosen(String outcome) {
    return Said.assumed(new Answer.Chosen(outcome), "");
  }

  /** Chance that a cause shows anything unusual on a check. */
  private static double shows(Check check, String cause) {
    double[] row = check.likelihood().get(cause);
    return row == null ? 0 : 1 - row[0];
  }

  /**
   * Whether a single recorded failure of a proof no longer applies. It describes the gate as found:
   * the proof fails while a cause is left that makes it fail at least half as often as the one that
   * does most.
   */
  private boolean isFailureOutdated(Check check) {
    if (check.kind() != Check.Kind.PROOF || recorded.truth().isEmpty() || removed.isEmpty()) {
      return false;
    }
    int fail = check.indexOf(Check.FAIL);
    return !isLeft(recorded.truth().get(), causes -> most(check, fail, causes));
  }

  /**
   * The result of a proof that the file does not mention, from how often the remaining causes make
   * it fail.
   */
  private Said proof(Check proof) {
    double fails = most(proof, proof.indexOf(Check.FAIL), remaining);
    if (fails < SHOWS) {
      return chosen(Check.PASS);
    }
    return fails >= HALF ? chosen(Check.FAIL) : Said.assumed(new Answer.CannotTell(), "");
  }

  private boolean changed(Check check, Answer found, Function<Answer, Optional<String>> meaning) {
    return check.kind() == Check.Kind.CHECK
        && !removed.isEmpty()
        && meaning.apply(found).map(outcome -> isOutdated(check, outcome)).orElse(false);
  }

  private Said unsaid(Check check) {
    if (check.danger()) {
      String ordinary = check.outcomes().get(0).id();
      return Said.assumed(
          new Answer.Chosen(ordinary),
          "the file does not answer \"" + check.id() + "\": taken as \"" + ordinary + "\"");
    }
    if (check.kind() == Check.Kind.PROOF && recorded.truth().isPresent()) {
      return proof(check);
    }
    if (check.kind() == Check.Kind.CHECK && recorded.othersUsual()) {
      return Said.told(new Answer.Chosen(check.outcomes().get(0).id()));
    }
    return Said.assumed(new Answer.CannotTell(), "");
  }

  /**
   * Whether an answer from before a repair no longer applies: it was unusual, and no remaining
   * cause shows it as strongly as one that was removed. Ordinary answers stay, because removing
   * causes makes a gate more ordinary.
   */
  private boolean isOutdated(Check check, String outcome) {
    int at = check.indexOf(outcome);
    double gone = most(check, at, removed);
    return at > 0 && gone > 0 && most(check, at, remaining) < gone;
  }

  private static double most(Check check, int outcome, Collection<String> causes) {
    return causes.stream()
        .filter(check.likelihood()::containsKey)
        .mapToDouble(c -> check.likelihood().get(c)[outcome])
        .max()
        .orElse(0);
  }

  @Override
  public void repaired(Repair repair) {
    List<String> gone = new ArrayList<>();
    repair
        .removes()
        .forEach(
            (cause, chance) -> {
              boolean there = recorded.truth().isEmpty() || remaining.contains(cause);
              if (there && chance >= leastChance(repair.id(), cause)) {
                gone.add(cause);
              }
            });
    remaining.removeAll(gone);
    removed.addAll(gone);
  }

  /** The true causes that no repair has removed. */
  public Set<String> remaining() {
    return Set.copyOf(remaining);
  }

  private double leastChance(String repair, String cause) {
    List<String> right = recorded.repairs().orElse(List.of());
    if (right.contains(repair)) {
      return 0;
    }
    boolean another =
        right.stream().anyMatch(id -> base.repairs().get(id).removes().containsKey(cause));
    return another ? REMOVES_AS_WELL : REMOVES;
  }

  /**
   * The recorded result of the retest, or else one worked out from the true causes. A gate from
   * which no cause was removed does the same as before. Otherwise a complaint is left while a cause
   * remains that shows it at least half as strongly as the one that showed it most; a complaint
   * that no true cause shows is left until all causes are gone.
   */
  @Override
  public Optional<Event.Retested> retest() {
    int before = retests++;
    Optional<Event.Retested> told = recorded.retests().flatMap(t -> t.turn(before));
    boolean untouched = recorded.truth().isPresent() && removed.isEmpty();
    if (told.isPresent()) {
      boolean plain = !told.get().cured() && told.get().same().isEmpty();
      return plain && untouched ? Optional.of(asBefore()) : told;
    }
    return recorded
        .truth()
        .map(truth -> untouched && !remaining.isEmpty() ? asBefore() : left(truth));
  }

  private static Event.Retested asBefore() {
    return new Event.Retested(false, Optional.of(true));
  }

  private Event.Retested left(List<String> truth) {
    List<String> left =
        recorded.complaints().stream()
            .filter(c -> isLeft(truth, causes -> shows(base.checks().get(c), causes)))
            .toList();
    boolean none = recorded.complaints().isEmpty() ? remaining.isEmpty() : left.isEmpty();
    if (none) {
      return new Event.Retested(true);
    }
    return left.size() == recorded.complaints().size()
        ? asBefore()
        : Event.Retested.left(left, List.of());
  }

  /**
   * Whether something that causes produce is still present: while a cause remains that produces it
   * at least half as strongly as the strongest one did; if none produces it, until all are gone.
   */
  private boolean isLeft(List<String> truth, ToDoubleFunction<Collection<String>> readiness) {
    double found = readiness.applyAsDouble(truth);
    return found > 0 ? readiness.applyAsDouble(remaining) >= HALF * found : !remaining.isEmpty();
  }

  /** The chance that a complaint shows at a retest, by the cause that shows it most. */
  private double shows(Check complaint, Collection<String> causes) {
    int said = complaint.indexOf(Check.SAID);
    return causes.stream()
        .filter(complaint.likelihood()::containsKey)
        .mapToDouble(c -> complaint.likelihood().get(c)[said] * base.causes().get(c).retestFails())
        .max()
        .orElse(0);
  }
}
