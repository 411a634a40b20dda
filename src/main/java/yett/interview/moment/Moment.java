package yett.interview.moment;

import java.util.List;
import java.util.Optional;
import yett.belief.Belief;
import yett.interview.event.Entry;
import yett.interview.evidence.Believed;
import yett.interview.evidence.Conflict;
import yett.interview.evidence.Trail;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.rules.Judgement;

/**
 * A case at one moment: its events, the conclusions of the rules, the belief, and the next step.
 *
 * @param entries all events, including those set apart
 * @param apart events on which the reasoning fails; the rest is worked out without them
 */
public record Moment(
    List<Entry> entries,
    List<SetApart> apart,
    CaseState state,
    Judgement judgement,
    Believed believed,
    Step step) {

  public Belief belief() {
    return believed.belief();
  }

  public Trail trail() {
    return believed.trail();
  }

  /** Answers that are unlikely to be all right. */
  public Optional<Conflict> conflict() {
    return believed.conflict();
  }

  /** Number of the next event. */
  public long next() {
    return entries.isEmpty() ? 1 : entries.get(entries.size() - 1).number() + 1;
  }

  /** This moment with further events that were set apart. */
  public Moment beside(List<Entry> all, List<SetApart> left) {
    return new Moment(List.copyOf(all), left, state, judgement, believed, step);
  }
}
