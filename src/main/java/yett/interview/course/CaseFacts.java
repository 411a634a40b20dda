package yett.interview.course;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.site.SiteFacts;
import yett.interview.site.Trends;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Fact;

/** Collects the facts about a case that the rules work on. */
final class CaseFacts {
  private final RuleBase base;
  private final SiteFacts sites;

  CaseFacts(RuleBase base) {
    this.base = base;
    this.sites = new SiteFacts(base);
  }

  /** The facts of the case as it stands now. */
  Set<Fact> of(CaseState state, List<Entry> entries) {
    Set<Fact> facts = new HashSet<>(sites.facts(state.told().site()));
    facts.add(
        new Fact.Person(
            state.role(), state.role() == Role.CALLER && CallLog.of(entries).isChild()));
    if (remembers(state)) {
      Trends trends = new Trends(base, state, entries);
      facts.addAll(baselines(state, trends, Long.MAX_VALUE));
      known(state).forEach(e -> trend(trends, e.check()).ifPresent(facts::add));
    }
    state
        .told()
        .complaints()
        .ifPresent(
            picked -> {
              facts.add(new Fact.ComplaintsTaken());
              picked.forEach(c -> facts.add(new Fact.Complained(c)));
            });
    state.told().histories().ifPresent(h -> h.forEach(id -> facts.add(new Fact.Happened(id))));
    for (CaseState.Answered answered : state.answers()) {
      facts.addAll(given(answered));
    }
    // Not everybody's "no" ends a reported danger, so the rules see earlier answers about dangers
    // too.
    for (CaseState.Answered answered : state.before()) {
      Check check = base.checks().get(answered.check());
      if (check != null && check.danger() && answered.answer().tells()) {
        facts.addAll(given(answered));
      }
    }
    int epoch = 0;
    for (Entry deed : state.work().deeds()) {
      if (deed.event() instanceof Event.Repaired repaired) {
        facts.add(new Fact.Done(repaired.repair(), ++epoch));
      } else if (deed.event() instanceof Event.Retested tried && tried.same().orElse(false)) {
        facts.add(new Fact.StillFails(epoch));
      }
    }
    return facts;
  }

  /**
   * Groups the readings that were taken before a repair ended some baselines, by the baselines that
   * held when they were taken. Values are event numbers. Readings to which the present baselines
   * apply are left out.
   */
  Map<Set<Fact>, Set<Long>> beforeRepairs(CaseState state, List<Entry> entries) {
    Map<Set<Fact>, Set<Long>> before = new LinkedHashMap<>();
    if (!remembers(state) || state.work().deeds().isEmpty()) {
      return before;
    }
    Trends trends = new Trends(base, state, entries);
    Set<Fact> now = baselines(state, trends, Long.MAX_VALUE);
    for (CaseState.Answered answered : state.answers()) {
      if (answered.answer().reading().isPresent()) {
        Set<Fact> then = baselines(state, trends, answered.event());
        if (!then.equals(now)) {
          before.computeIfAbsent(then, b -> new HashSet<>()).add(answered.event());
        }
      }
    }
    return before;
  }

  /**
   * The baselines of an inspection. They are shown beside the usual range; no verdict depends on
   * them. Empty where a fault is looked for.
   */
  Set<Fact> besideTheRange(CaseState state, List<Entry> entries) {
    return state.isInspection() && !known(state).isEmpty()
        ? baselines(state, new Trends(base, state, entries), Long.MAX_VALUE)
        : Set.of();
  }

  /** The facts with these baselines in place of their own. */
  static Set<Fact> with(Set<Fact> baselines, Set<Fact> facts) {
    Set<Fact> all =
        facts.stream()
            .filter(f -> !(f instanceof Fact.Baseline))
            .collect(Collectors.toCollection(HashSet::new));
    all.addAll(baselines);
    return all;
  }

  /**
   * Whether baselines take part in the judgement: where a fault is looked for. An inspection shows
   * them beside the range instead.
   */
  private static boolean remembers(CaseState state) {
    return !state.isInspection() && !known(state).isEmpty();
  }

  private static List<Event.Earlier> known(CaseState state) {
    return state.opened().map(Event.Opened::earlier).orElse(List.of()).stream()
        .filter(Event.Earlier::baseline)
        .toList();
  }

  /**
   * The baselines that hold at an event: readings of the gate in order, except those that a repair
   * before the event could have changed.
   */
  private Set<Fact> baselines(CaseState state, Trends trends, long event) {
    return known(state).stream()
        .filter(e -> !state.work().changedBefore(event, e.check(), base))
        .map(
            e ->
                new Fact.Baseline(
                    e.check(),
                    trends.asToday(e),
                    LocalDate.ofInstant(e.at(), ZoneOffset.UTC).toString()))
        .collect(Collectors.toSet());
  }

  private Optional<Fact> trend(Trends trends, String id) {
    return Optional.ofNullable(base.checks().get(id))
        .flatMap(
            check ->
                trends
                    .of(check)
                    .map(
                        t ->
                            new Fact.Trend(
                                id, t.slope(), t.low(), t.high(), trends.words(check, t))));
  }

  /** The facts for an answer, one for each outcome; none for one that was not given. */
  List<Fact> given(CaseState.Answered a) {
    if (!base.checks().containsKey(a.check())) {
      return List.of(); // the check has left the rule base since the case was begun
    }
    return a.answer()
        .map(
            c -> c.all().stream().map(o -> chosen(a, o, c.all())).toList(),
            r -> List.of(fact(a, "", r.value(), true, List.of())),
            () -> List.of(new Fact.Untold(a.check(), a.event())),
            List::of);
  }

  private static Fact chosen(CaseState.Answered a, String outcome, List<String> all) {
    List<String> also = all.stream().filter(o -> !o.equals(outcome)).toList();
    return fact(a, outcome, Double.NaN, false, also);
  }

  private static Fact fact(
      CaseState.Answered a, String outcome, double value, boolean measured, List<String> also) {
    return new Fact.Given(a.check(), outcome, value, measured, a.by(), a.event(), a.epoch(), also);
  }
}
