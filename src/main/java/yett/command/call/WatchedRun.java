package yett.command.call;

import java.time.Duration;
import java.util.List;
import yett.command.diagnose.Sitting;
import yett.interview.Answer;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Moment;
import yett.interview.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;

/**
 * The run that a caller watched after a repair: open once, close once. It is the proof that a
 * caller can give, and is not asked for twice.
 */
record WatchedRun(Sitting sitting) {
  /** Afterwards the gate may have done something else meanwhile. */
  private static final Duration SAME_CALL = Duration.ofMinutes(20);

  /**
   * Whether the run of this call shows what the step asks. Nothing that was done or found dangerous
   * since may lie between.
   */
  boolean proves(Step.Ask step) {
    Moment now = sitting.moment();
    if (step.check().kind() != Check.Kind.PROOF
        || step.check().who() != Role.CALLER
        || !now.state().work().cured()) {
      return false;
    }
    List<Entry> valid = Entry.valid(now.entries());
    int at = valid.size() - 1;
    while (at >= 0 && !(valid.get(at).event() instanceof Event.Retested)) {
      if (changes(valid.get(at).event())) {
        return false;
      }
      at--;
    }
    return at >= 0
        && valid.get(at).by() == Role.CALLER
        && Duration.between(valid.get(at).at(), sitting.open().now()).compareTo(SAME_CALL) < 0;
  }

  void keep(Step.Ask step) {
    sitting.record(new Event.Answered(step.check().id(), new Answer.Chosen(Check.PASS)));
  }

  private boolean changes(Event event) {
    if (event instanceof Event.Answered answered) {
      Check check = sitting.base().checks().get(answered.check());
      return check == null || check.danger() || check.kind() == Check.Kind.PROOF;
    }
    return !(event instanceof Event.Said
        || event instanceof Event.Noted
        || event instanceof Event.Tended);
  }
}
