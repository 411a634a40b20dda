package yett.interview.search;

import java.util.List;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.evidence.Trail;
import yett.interview.moment.Present;
import yett.interview.state.CaseState;
import yett.knowledge.Place;
import yett.knowledge.Planning;

/**
 * Watches whether further checks still change the belief. If {@link Planning#patience} checks
 * change no suspicion, counted from the last repair or from when the person chose to go on, the
 * person is asked what to do. Looks at one place made one after the other count as one check.
 */
final class Headway {
  private final Present present;
  private final long since;

  Headway(Present present) {
    this.present = present;
    this.since =
        present.state().work().deeds().stream()
            .mapToLong(Entry::number)
            .reduce(present.state().work().wentOn(), Math::max);
  }

  /** Whether none of the last checks, {@link Planning#patience} of them, changed a suspicion. */
  boolean isLost() {
    Planning planning = present.base().planning();
    return planning.patience() > 0
        && begin(planning.patience()).filter(e -> moved(e) < planning.suspicion()).isPresent();
  }

  /**
   * The number of the event with which the last {@code checks} checks began; empty if there were
   * fewer.
   */
  private Optional<Long> begin(int checks) {
    List<CaseState.Answered> looks =
        present.state().answers().stream()
            .filter(a -> a.event() > since && present.isLook(a))
            .toList();
    int count = 0;
    Optional<Place> place = Optional.empty();
    for (int i = looks.size() - 1; i >= 0; i--) {
      Optional<Place> here = present.base().checks().get(looks.get(i).check()).place();
      count += here.isPresent() && here.equals(place) ? 0 : 1;
      place = here;
      if (count > checks) {
        return Optional.of(looks.get(i + 1).event());
      }
    }
    return count == checks ? Optional.of(looks.get(0).event()) : Optional.empty();
  }

  /** The largest change of the chance of any cause since before an event. */
  private double moved(long event) {
    double[] before = present.trail().prior();
    double[] now = before;
    for (Trail.Move move : present.trail().moves()) {
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
