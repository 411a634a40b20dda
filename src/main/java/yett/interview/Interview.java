package yett.interview;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
  private final CaseFacts facts;
  private final NextStep next;
  private final boolean conflicts;

  /**
   * @param conflicts whether answers are looked for that hardly fit together
   */
  Interview(Expertise expertise, boolean conflicts) {
    this(expertise, expertise.planner()::advise, conflicts);
  }

  Interview(Expertise expertise, NextStep.Adviser adviser) {
    this(expertise, adviser, true);
  }

  private Interview(Expertise expertise, NextStep.Adviser adviser, boolean conflicts) {
    this.conflicts = conflicts;
    this.expertise = expertise;
    this.facts = new CaseFacts(expertise.base());
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
    fold = new BeliefFold(expertise.base(), expertise.outset(), conflicts);
  }

  private Moment at(List<Entry> entries, CaseState state) {
    Judgement judgement =
        judged(state, entries)
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
    return judged(CaseState.of(entries), entries);
  }

  /**
   * What the rules make of a case. Each reading is judged by the baselines that held when it was
   * made: a repair ends them for what is read after it, and takes back nothing that was found.
   */
  private Judgement judged(CaseState state, List<Entry> entries) {
    Set<Fact> now = facts.of(state, entries);
    Map<Long, Judgement> then = new HashMap<>();
    facts
        .beforeRepairs(state, entries)
        .forEach(
            (known, answers) -> {
              Judgement judged = judge.judge(CaseFacts.with(known, now));
              answers.forEach(a -> then.put(a, judged));
            });
    Set<Fact> known = facts.besideTheRange(state, entries);
    Optional<Judgement> beside =
        known.isEmpty() ? Optional.empty() : Optional.of(judge.judge(CaseFacts.with(known, now)));
    Judgement judgement = judge.judge(now);
    if (beside.isPresent()) {
      return judgement.beside(beside.get());
    }
    return then.isEmpty() ? judgement : judgement.judgedThen(then);
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
        facts.given(
            new CaseState.Answered(event, state.work().epoch(), state.role(), check.id(), answer));
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Set<Fact> all = facts.of(state, moment.entries());
    all.add(given.get());
    return judge.judge(all).finding(event);
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
