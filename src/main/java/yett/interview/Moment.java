package yett.interview;

import java.util.List;
import java.util.Optional;
import yett.belief.Belief;
import yett.rules.Judgement;

/**
 * A case as it stands: what was said and done, what the rules and the mathematics make of it, and
 * the step that follows.
 *
 * @param entries all that happened, also what was set apart
 * @param apart what the reasoning fails on; the rest is as if it were not there
 * @param conflict answers that can hardly all be right
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

  /** The same, of a case that has other events too. */
  Moment beside(List<Entry> all, List<SetApart> left) {
    return new Moment(List.copyOf(all), left, state, judgement, belief, trail, conflict, step);
  }
}
