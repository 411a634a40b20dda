package yett.interview;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.belief.Observation;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.Judgement;

/**
 * Leads one case. {@link #at} is a function of the events alone: the same events with the same rule
 * base give the same next step, so a case can be replayed, resumed elsewhere, undone and compared.
 * What is kept between calls only saves work. Not for use by several threads at once.
 */
public final class Interview implements AutoCloseable {
  /** An answer that the present belief gives less than this chance is queried. */
  static final double UNLIKELY = 0.02;

  private final Expertise expertise;
  private Judge judge;
  private BeliefFold fold;
  private final SiteFacts sites;
  private final NextStep next;

  Interview(Expertise expertise) {
    this(expertise, expertise.planner()::advise);
  }

  Interview(Expertise expertise, NextStep.Adviser adviser) {
    this.expertise = expertise;
    this.sites = new SiteFacts(expertise.base());
    this.next = new NextStep(expertise, adviser);
    begin();
  }

  /** The case as these events leave it. */
  public Moment at(List<Entry> entries) {
    return at(entries, CaseState.of(entries));
  }

  /** The same for the person who is at the keyboard now, whoever gave the last answer. */
  public Moment at(List<Entry> entries, Role present) {
    return at(entries, CaseState.of(entries, present));
  }

  /**
   * As {@link #at(List, Role)}; but events on which the reasoning fails are set apart instead of
   * ending it. They are in the moment, told as such.
   */
  public Moment asFarAsPossible(List<Entry> entries, Role present) {
    return new FailingEvents(sound -> attempt(sound, present)).of(entries);
  }

  private Moment attempt(List<Entry> entries, Role present) {
    try {
      return at(entries, present);
    } catch (RuntimeException e) {
      judge.close(); // what it kept to save work may be half done
      begin();
      throw e;
    }
  }

  private void begin() {
    judge = expertise.rules().newJudge();
    fold = new BeliefFold(expertise.base(), expertise.outset());
  }

  private Moment at(List<Entry> entries, CaseState state) {
    Judgement judgement =
        judge
            .judge(facts(state, entries))
            .without(
                state.before().stream().map(CaseState.Answered::event).collect(Collectors.toSet()));
    BeliefFold.Result belief = fold.fold(state, judgement);
    Step step = next.after(state, judgement, belief.belief(), belief.trail());
    return new Moment(
        List.copyOf(entries),
        List.of(),
        state,
        judgement,
        belief.belief(),
        belief.trail(),
        belief.conflict(),
        step);
  }

  /** What the rules make of these events; nothing is believed or planned. */
  public Judgement judgement(List<Entry> entries) {
    return judge.judge(facts(CaseState.of(entries), entries));
  }

  /** What the rules are told of a case. */
  Set<Fact> facts(CaseState state, List<Entry> entries) {
    Set<Fact> facts = new HashSet<>(sites.facts(state.told().site()));
    facts.add(new Fact.Person(state.role()));
    if (!state.isInspection()) { // which tells them beside the range instead
      earlier(state, entries).forEach(facts::add);
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
      given(answered).ifPresent(facts::add);
    }
    // Not everybody's word ends a danger that somebody told of: the rules see both.
    for (CaseState.Answered answered : state.before()) {
      Check check = expertise.base().checks().get(answered.check());
      if (check != null && check.danger() && answered.answer().tells()) {
        given(answered).ifPresent(facts::add);
      }
    }
    int epoch = 0;
    for (Entry deed : state.work().deeds()) {
      if (deed.event() instanceof Event.Repaired repaired) {
        facts.add(new Fact.Done(repaired.repair(), ++epoch));
      }
    }
    return facts;
  }

  /** Readings of the gate in order, and how they moved, but for those that a repair changed. */
  private Stream<Fact> earlier(CaseState state, List<Entry> entries) {
    List<Event.Earlier> known = state.opened().map(Event.Opened::earlier).orElse(List.of());
    if (known.isEmpty()) {
      return Stream.of();
    }
    Trends trends = new Trends(expertise.base(), state, entries);
    return known.stream()
        .filter(Event.Earlier::baseline)
        .filter(e -> !changed(state, e.check()))
        .flatMap(
            e ->
                Stream.concat(
                    Stream.of(
                        new Fact.Baseline(
                            e.check(),
                            trends.asToday(e),
                            LocalDate.ofInstant(e.at(), ZoneOffset.UTC).toString())),
                    trend(trends, e.check()).stream()));
  }

  private boolean changed(CaseState state, String check) {
    return state.work().deeds().stream()
        .anyMatch(
            d ->
                d.event() instanceof Event.Repaired repaired
                    && expertise.base().changes(repaired.repair(), check));
  }

  private Optional<Fact> trend(Trends trends, String id) {
    return Optional.ofNullable(expertise.base().checks().get(id))
        .flatMap(
            check ->
                trends
                    .of(check)
                    .map(
                        t ->
                            new Fact.Trend(
                                id, t.slope(), t.low(), t.high(), trends.words(check, t))));
  }

  private Optional<Fact> given(CaseState.Answered a) {
    if (!expertise.base().checks().containsKey(a.check())) {
      return Optional.empty(); // the check has left the rule base since the case was begun
    }
    return a.answer()
        .map(
            c -> Optional.of(fact(a, c.outcome(), Double.NaN, false)),
            r -> Optional.of(fact(a, "", r.value(), true)),
            () -> untold(a),
            Optional::empty);
  }

  /** Of a danger it counts that nobody could tell. */
  private Optional<Fact> untold(CaseState.Answered a) {
    return expertise.base().checks().get(a.check()).danger()
        ? Optional.of(new Fact.Untold(a.check(), a.event()))
        : Optional.empty();
  }

  private static Fact fact(CaseState.Answered a, String outcome, double value, boolean measured) {
    return new Fact.Given(a.check(), outcome, value, measured, a.by(), a.event(), a.epoch());
  }

  /**
   * What an answer would be taken to mean, if it were the next event.
   *
   * @param chance that the present belief gives to such an answer
   */
  public record Hearing(Finding finding, double chance) {
    /** Whether the person should be asked if they are sure. */
    public boolean unlikely() {
      return chance < UNLIKELY;
    }
  }

  /** Listens to an answer without recording it; empty if it would not be weighed. */
  public Optional<Hearing> hear(Moment moment, Check check, Answer answer) {
    return meaning(moment, check, answer)
        .map(
            f ->
                new Hearing(f, moment.belief().chanceOf(new Observation(check.id(), f.weights()))));
  }

  /** The same for whoever does not ask how likely it is, which takes longer than to hear it. */
  public Optional<Finding> meaning(Moment moment, Check check, Answer answer) {
    CaseState state = moment.state();
    long event = moment.next();
    Optional<Fact> given =
        given(
            new CaseState.Answered(event, state.work().epoch(), state.role(), check.id(), answer));
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Set<Fact> facts = facts(state, moment.entries());
    facts.add(given.get());
    return judge.judge(facts).finding(event);
  }

  /**
   * Chance that each cause was there at the call-out, the most probable first; but what was most
   * probably brought about stands behind what brought it about, because mending the consequence
   * alone cures nothing for long.
   */
  public static List<RankedCause> ranking(Moment moment, RuleBase base) {
    double[] chances = moment.belief().atCallOut();
    double[] roots = moment.belief().arisenByItself();
    List<String> ids = moment.belief().model().causes();
    Map<String, Double> places = new HashMap<>();
    for (int i = 0; i < chances.length; i++) {
      places.put(ids.get(i), chances[i]);
    }
    Set<String> behind = new HashSet<>();
    for (int i = 0; i < chances.length; i++) {
      String consequence = ids.get(i);
      if (roots[i] < chances[i] / 2) {
        IntStream.range(0, chances.length)
            .filter(c -> base.causes().get(ids.get(c)).consequences().containsKey(consequence))
            .boxed()
            .max(Comparator.comparingDouble(c -> chances[c]))
            .ifPresent(
                root -> {
                  places.merge(consequence, chances[root], Math::min);
                  behind.add(consequence);
                });
      }
    }
    return IntStream.range(0, chances.length)
        .mapToObj(i -> new RankedCause(base.causes().get(ids.get(i)), chances[i]))
        .sorted(
            Comparator.comparingDouble((RankedCause r) -> -places.get(r.cause().id()))
                .thenComparing(r -> behind.contains(r.cause().id()))
                .thenComparing(r -> r.cause().id()))
        .toList();
  }

  /** A cause with the chance that it was there at the call-out. */
  public record RankedCause(Cause cause, double chance) {}

  public Expertise expertise() {
    return expertise;
  }

  @Override
  public void close() {
    judge.close();
  }
}
