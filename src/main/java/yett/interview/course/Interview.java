package yett.interview.course;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.belief.Observation;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.evidence.BeliefFold;
import yett.interview.evidence.Believed;
import yett.interview.evidence.Places;
import yett.interview.moment.Moment;
import yett.interview.search.Adviser;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.Judgement;

/**
 * Leads one case. {@link #at} depends on the events alone: the same events with the same rule base
 * give the same next step, so a case can be replayed, resumed elsewhere, undone and compared. State
 * between calls is only a cache. Not thread-safe.
 */
public final class Interview implements AutoCloseable {
  /** Chance below which the person is asked whether an answer is right. */
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

  Interview(Expertise expertise, Adviser adviser) {
    this(expertise, adviser, true);
  }

  private Interview(Expertise expertise, Adviser adviser, boolean conflicts) {
    this.conflicts = conflicts;
    this.expertise = expertise;
    this.facts = new CaseFacts(expertise.base());
    this.next = new NextStep(expertise, adviser);
    begin();
  }

  /** The case after these events. */
  public Moment at(List<Entry> entries) {
    return at(entries, CaseState.of(entries));
  }

  /**
   * The case after these events for the person who is at the keyboard now, whoever gave the last
   * answer.
   */
  public Moment at(List<Entry> entries, Role present) {
    return at(entries, CaseState.of(entries, present));
  }

  /**
   * Like {@link #at(List, Role)}, but sets apart events on which the reasoning fails instead of
   * throwing. The moment lists them.
   */
  public Moment asFarAsPossible(List<Entry> entries, Role present) {
    return new FailingEvents(expertise.base(), sound -> attempt(sound, present)).of(entries);
  }

  private Moment attempt(List<Entry> entries, Role present) {
    try {
      return at(entries, present);
    } catch (RuntimeException e) {
      judge.close(); // its cache may be half updated
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
    BeliefFold current = fold;
    Believed believed = new Believed(() -> current.fold(state, judgement));
    if (conflicts) {
      believed.now(); // where people answer, what fails must fail at its event
    }
    Step step = next.after(state, judgement, believed);
    return new Moment(List.copyOf(entries), List.of(), state, judgement, believed, step);
  }

  /** What the rules conclude from these events, without belief or plan. */
  public Judgement judgement(List<Entry> entries) {
    return judged(CaseState.of(entries), entries);
  }

  /**
   * What the rules conclude from a case. Each reading is judged by the baselines that held when it
   * was taken: a repair ends baselines for later readings and does not change earlier findings.
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
   * How an answer would be taken if it were the next event.
   *
   * @param chance that the present belief gives to such an answer
   */
  public record Hearing(Finding finding, double chance) {
    /** Whether the person should be asked to confirm it. */
    public boolean unlikely() {
      return chance < UNLIKELY;
    }
  }

  /** Interprets an answer without recording it; empty if it would not be used as evidence. */
  public Optional<Hearing> hear(Moment moment, Check check, Answer answer) {
    return meaning(moment, check, answer).map(f -> new Hearing(f, chance(moment, check, f)));
  }

  /**
   * The chance of an answer; of several outcomes that of the least likely by itself, because all of
   * them together are rare even where each is common.
   */
  private static double chance(Moment moment, Check check, Finding finding) {
    Observation highest = new Observation(check.id(), finding.weights());
    int outcomes = check.outcomes().size();
    return Stream.concat(
            Stream.of(highest),
            finding.also().stream()
                .map(o -> Observation.of(check.id(), check.indexOf(o), outcomes)))
        .mapToDouble(moment.belief()::chanceOf)
        .min()
        .getAsDouble();
  }

  /** The meaning of an answer without its chance, which takes longer to work out. */
  public Optional<Finding> meaning(Moment moment, Check check, Answer answer) {
    CaseState state = moment.state();
    long event = moment.next();
    List<Fact> given =
        facts.given(
            new CaseState.Answered(event, state.work().epoch(), state.role(), check.id(), answer));
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Set<Fact> all = facts.of(state, moment.entries());
    all.addAll(given);
    return judge.judge(all).finding(event);
  }

  /**
   * The causes by the chance that they were present at the call-out, the most probable first. A
   * cause that was probably brought about by another one comes after that one, because repairing
   * the consequence alone does not last.
   */
  public static List<RankedCause> ranking(Moment moment, RuleBase base) {
    double[] chances = moment.belief().atCallOut();
    double[] roots = moment.belief().arisenByItself();
    List<String> ids = moment.belief().model().causes();
    Places places = new Places(base, ids, chances, roots);
    return IntStream.range(0, chances.length)
        .mapToObj(i -> new RankedCause(base.causes().get(ids.get(i)), chances[i]))
        .sorted(
            Comparator.comparingDouble((RankedCause r) -> -places.of(r.cause().id()))
                .thenComparing(r -> places.behind(r.cause().id()))
                .thenComparing(r -> r.cause().id()))
        .toList();
  }

  /** A cause with the chance that it was present at the call-out. */
  public record RankedCause(Cause cause, double chance) {}

  public Expertise expertise() {
    return expertise;
  }

  @Override
  public void close() {
    judge.close();
  }
}
