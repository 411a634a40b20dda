package yett.dispatch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import yett.interview.CaseState;
import yett.interview.NotExcluded;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.RuleBase;

/**
 * Decides only from what was said how soon somebody has to be at the gate; used for lists of many
 * calls.
 */
public final class CallUrgency {
  private CallUrgency() {}

  public static DispatchSheet.Urgency of(RuleBase base, CaseState state, Instant at, ZoneId zone) {
    List<String> dangers =
        state.answers().stream()
            .filter(a -> base.checks().containsKey(a.check()))
            .flatMap(a -> told(base.checks().get(a.check()), a).stream())
            .toList();
    List<Pressing> pressing =
        state.told().pressing().orElse(List.of()).stream()
            .map(base.telephone().pressing()::get)
            .filter(p -> p != null)
            .toList();
    return Urgencies.of(
        NotExcluded.of(base, state).after(dangers), pressing, Urgencies.quiet(state), at, zone);
  }

  private static List<String> told(Check check, CaseState.Answered answered) {
    int at = check.danger() ? answered.answer().choice().map(check::indexOf).orElse(0) : 0;
    return at > 0 ? List.of(check.outcomes().get(at).text()) : List.of();
  }
}
