package yett.practice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;

/** Provides exercises: drawn from the cards as wanted, or made from test cases. */
public final class Exercises {
  /**
   * Draws until an exercise has the wanted level, at most this often; then the last one is taken.
   */
  private static final int MOST_DRAWS = 12;

  private final Expertise expertise;
  private final RuleBase base;

  public Exercises(Expertise expertise) {
    this.expertise = expertise;
    this.base = expertise.base();
  }

  /**
   * The exercise with this seed; always the same.
   *
   * @param area in which the fault is to be
   * @param level wanted; it may be missed if a dozen draws do not give it
   * @throws IllegalArgumentException if this role can repair nothing in this area
   */
  public Exercise drawn(Optional<String> area, Optional<Level> level, Role role, long seed) {
    Exercise last = null;
    try (Interview interview = expertise.newInterview()) {
      for (int turn = 0; turn < MOST_DRAWS; turn++) {
        long own = seed + turn * 0x9E3779B97F4A7C15L;
        boolean two = level.equals(Optional.of(Level.HARD));
        Draw.Drawn drawn = new Draw(base, own).draw(area, two, role, "exercise " + seed);
        last = exercise(drawn.told(), true, own, drawn.roots(), interview);
        if (level.isEmpty() || last.level() == level.get()) {
          return last;
        }
      }
    }
    return last;
  }

  /** Areas that have causes, in the order of the cards. */
  public List<String> areas() {
    return base.causes().values().stream()
        .filter(c -> !c.id().equals(Cause.NOT_IN_RULE_BASE))
        .map(c -> c.area())
        .filter(a -> !a.isEmpty())
        .distinct()
        .toList();
  }

  /**
   * Whether a test case can be an exercise: it says what is wrong, and somebody works on the gate.
   */
  public static boolean fits(RecordedCase told) {
    return told.truth().filter(t -> !t.isEmpty()).isPresent()
        && !told.complaints().isEmpty()
        && told.person().may(Role.TRAINEE);
  }

  /** A test case as an exercise; empty if it does not say what is wrong, or is a call. */
  public Optional<Exercise> of(RecordedCase told, long seed) {
    if (!fits(told)) {
      return Optional.empty();
    }
    try (Interview interview = expertise.newInterview()) {
      return Optional.of(exercise(told, false, seed, roots(told.truth().get()), interview));
    }
  }

  private Exercise exercise(
      RecordedCase told, boolean drawn, long seed, int roots, Interview interview) {
    List<Entry> opening = Opening.entries(told, base.fingerprint());
    Set<String> truth = Set.copyOf(told.truth().orElseThrow());
    // The next step is to ask about dangers, so nothing is planned here.
    Moment moment = interview.at(opening);
    List<String> ranking =
        Interview.ranking(moment, base).stream().map(r -> r.cause().id()).toList();
    int rank = truth.stream().mapToInt(ranking::indexOf).min().orElse(0) + 1;
    String area = base.causes().get(told.truth().get().get(0)).area();
    return new Exercise(told, drawn, seed, area, Level.of(rank, roots));
  }

  /** How many of the faults are not a consequence of another one of them. */
  private int roots(List<String> truth) {
    return (int)
        truth.stream()
            .filter(
                c ->
                    truth.stream()
                        .noneMatch(o -> base.causes().get(o).consequences().containsKey(c)))
            .count();
  }
}
