package yett.record;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/** Lists the checks and repairs that are left for the next person. */
final class OpenWork {
  private final RuleBase base;
  private final CaseState state;
  private final Site site;

  OpenWork(RuleBase base, CaseState state) {
    this.base = base;
    this.state = state;
    this.site = new SiteFacts(base).site(state.told().site());
  }

  Set<String> checks() {
    return base.ordinaryChecks()
        .filter(c -> !c.danger() && site.allows(c))
        .filter(
            c -> state.latest(c.id()).map(a -> a.answer().putOff()).orElse(true) || couldNotHere(c))
        .map(Check::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Whether somebody better qualified may be able to answer a check that this person could not. */
  private boolean couldNotHere(Check check) {
    return state.latest(check.id()).map(a -> a.answer().hopeless()).orElse(false)
        && state.role() == Role.CALLER;
  }

  Set<String> repairs() {
    Set<String> done = new HashSet<>();
    for (Entry deed : state.work().deeds()) {
      if (deed.event() instanceof Event.Repaired e) {
        done.add(e.repair());
      }
    }
    return base.repairs().values().stream()
        .filter(r -> !done.contains(r.id()) && site.allows(r))
        .map(Repair::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
