package yett.interview;

import java.util.List;
import java.util.Optional;
import yett.belief.Belief;
import yett.rules.Judgement;

/**
 * A case at one moment: its events, the conclusions of the rules, the belief, and the next step.
 *
 * @param entries all events, including those set apart
 * @param apart events on which the reasoning fails; the rest is worked out without them
 * @param conflict answers that are unlikely to be all right
 */
public record Moment(
    List<Entry> entries,
    List<SetApart> apart,
    CaseState state,
    Judgement judgement,
    Belief belief,
    Trail trail,
    Optional<Conflict> conflict,
    Step step) {

  /** Number of the next event. */
  public long next() {
    return entries.isEmpty() ? 1 : entries.get(entries.size() - 1).number() + 1;
  }

  /** This moment with further events that were set apart. */
  Moment beside(List<Entry> all, List<SetApart> left) {
    return new Moment(List.copyOf(all), left, state, judgement, belief, trail, conflict, step);
  }
}
