package yett.interview.danger;

import yett.interview.event.Entry;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.StopNow;

/** Whether a danger was made safe and still is, for the next step and for what is written of it. */
public final class SafeNow {
  private SafeNow() {}

  /**
   * Whether every report of a danger was made safe and still is.
   *
   * @param stop id of its card
   */
  public static boolean is(String stop, Moment moment, RuleBase base) {
    return moment.judgement().stops().stream()
        .filter(s -> s.stop().equals(stop))
        .allMatch(s -> is(s, moment.state(), base));
  }

  /**
   * Somebody at the gate does again what a caller did. It counts as undone after a new report of
   * the danger, and if the gate is no longer in the state in which it was made safe.
   */
  static boolean is(StopNow stop, CaseState state, RuleBase base) {
    Entry done = state.madeSafe().get(stop.stop());
    return done != null
        && done.number() > stop.event()
        && !Dangers.isSaidFromAfar(done.by(), state.role())
        && (!base.stops().containsKey(stop.stop())
            || base.stops().get(stop.stop()).leaves().stream()
                .allMatch(safe -> stands(safe, state, base)));
  }

  /** Whether a state is in force, as far as this person may bring it about. */
  private static boolean stands(String safe, CaseState state, RuleBase base) {
    SetUp setUp = base.setUps().get(safe);
    return setUp == null || !state.role().may(setUp.who()) || state.work().setUps().contains(safe);
  }
}
