package yett.interview;

import java.util.List;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.RuleBase;

/**
 * Whether asking still gets anywhere. Behind the last repair, or since the person chose to go on,
 * so many checks may move no suspicion before the person is asked what to do. Looks of one place
 * made one after the other count as one check.
 */
final class Headway {
  private final RuleBase base;
  private final CaseState state;
  private final Trail trail;

  Headway(RuleBase base, CaseState state, Trail trail) {
    this.base = base;
    this.state = state;
    this.trail = trail;
  }

  /** Whether the last checks, as many as people have patience for, have moved nothing. */
  boolean isLost() {
    int patience = base.planning().patience();
    if (patience == 0) {
      return false;
    }
    Optional<Long> begin = begin(patience);
    return begin.filter(event -> moved(event) < base.planning().suspicion()).isPresent();
  }

  /** The event that began the last so many checks; empty if there were fewer. */
  private Optional<Long> begin(int checks) {
    List<CaseState.Answered> answers = state.answers();
    Optional<Place> place = Optional.empty();
    int count = 0;
    for (int i = answers.size() - 1; i >= 0 && answers.get(i).event() > since(); i--) {
      Check check = base.checks().get(answers.get(i).check());
      if (check != null && check.kind() == Check.Kind.CHECK && !check.danger()) {
        boolean along = check.place().isPresent() && check.place().equals(place);
        count += along ? 0 : 1;
        place = check.place();
        if (count > checks) {
          return Optional.of(answers.get(i + 1).event());
        }
      }
    }
    return count == checks ? firstSince() : Optional.empty();
  }

  private Optional<Long> firstSince() {
    return state.answers().stream()
        .map(CaseState.Answered::event)
        .filter(event -> event > since())
        .findFirst();
  }

  private long since() {
    long deed = state.work().deeds().stream().mapToLong(Entry::number).max().orElse(0);
    return Math.max(deed, state.work().wentOn());
  }

  /** By how much the chance of some cause has changed since before an event. */
  private double moved(long event) {
    double[] before = trail.prior();
    double[] now = before;
    for (Trail.Move move : trail.moves()) {
      if (move.event() < event) {
        before = move.after();
      }
      now = move.after();
    }
    double most = 0;
    for (int c = 0; c < now.length; c++) {
      most = Math.max(most, Math.abs(now[c] - before[c]));
    }
    return most;
  }
}
