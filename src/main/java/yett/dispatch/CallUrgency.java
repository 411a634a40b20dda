package yett.dispatch;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import yett.dispatch.Urgencies.Danger;
import yett.interview.danger.NotExcluded;
import yett.interview.danger.SaidOver;
import yett.interview.event.Entry;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.RuleBase;

/**
 * Decides only from what was said how soon somebody has to be at the gate; used for lists of many
 * calls.
 */
public final class CallUrgency {
  private CallUrgency() {}

  /**
   * Whether the answers alone decide it. Where a caller says that a danger is over, the rules say
   * whether that ends it: {@link Dispatcher#urgency}.
   */
  public static boolean isCertain(RuleBase base, CaseState state) {
    return !SaidOver.any(state, base);
  }

  /**
   * @param entries of the case
   */
  public static DispatchSheet.Urgency of(
      RuleBase base, CaseState state, List<Entry> entries, ZoneId zone) {
    Instant at = Urgencies.lastWord(entries);
    List<Danger> dangers =
        state.answers().stream()
            .filter(a -> base.checks().containsKey(a.check()))
            .flatMap(a -> told(base, base.checks().get(a.check()), a).stream())
            .toList();
    List<Danger> all = new ArrayList<>(dangers);
    all.addAll(Urgencies.complaints(base, state));
    NotExcluded.of(base, state).words().forEach(w -> all.add(Danger.atOnce(w)));
    List<Pressing> pressing =
        state.told().pressing().orElse(List.of()).stream()
            .map(base.telephone().pressing()::get)
            .filter(p -> p != null)
            .toList();
    return Urgencies.of(all, pressing, Urgencies.Quiet.of(state), at, zone);
  }

  private static List<Danger> told(RuleBase base, Check check, CaseState.Answered answered) {
    int at = check.danger() ? answered.answer().choice().map(check::indexOf).orElse(0) : 0;
    return at > 0
        ? List.of(new Danger(check.outcomes().get(at).text(), base.telephone().urgency(check.id())))
        : List.of();
  }
}
