package yett.practice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.moment.Moment;
import yett.interview.state.WorkTime;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.Contradiction;

/**
 * One exercise: a faulty gate, a trainee who decides, and an interview that treats what they do
 * like answers to its own questions. Anything dangerous is refused and counted.
 */
public final class Workbench implements AutoCloseable {
  private static final int OTHER_WORLDS = 5;

  /** From this chance a cause counts as confirmed; screens call it very likely. */
  private static final double CONFIRMED = 0.8;

  private final Exercise exercise;
  private final RuleBase base;
  private final Interview interview;
  private final FaultyGate gate;
  private final SafetyGate safety;
  private final Compass compass;
  private final Consumer<PracticeEntry> keep;
  private final List<Entry> entries;
  private final List<Slip> slips = new ArrayList<>();
  private final List<Departure> departures = new ArrayList<>();
  private final List<String> guesses = new ArrayList<>();
  private int hints;
  private double minutes;
  private Moment moment;

  /**
   * @param before what has already happened in it, in order; empty for a new one
   * @param keep receives everything that happens, before it takes effect
   */
  public Workbench(
      Expertise expertise,
      Exercise exercise,
      List<PracticeEntry> before,
      Consumer<PracticeEntry> keep) {
    this.exercise = exercise;
    this.base = expertise.base();
    this.interview = expertise.newInterview();
    this.gate = exercise.gate(base);
    this.safety = new SafetyGate(base, expertise.planner());
    this.compass = new Compass(interview);
    this.entries = new ArrayList<>(Opening.entries(exercise.told(), base.fingerprint()));
    before.forEach(this::again);
    this.keep = keep;
    this.moment = interview.at(entries);
  }

  private void again(PracticeEntry entry) {
    if (entry.event() != null) {
      entry.event().accept(followed).run();
      add(entry.event());
    } else if (entry.slip() != null) {
      slips.add(entry.slip());
    } else if (entry.departure() != null) {
      departures.add(entry.departure());
    } else if (entry.best() != null) {
      hints++;
    } else if (entry.guess() != null) {
      guesses.add(entry.guess());
    }
  }

  /** Repeats what an earlier event did to the gate. The rule base may no longer have its card. */
  private final SomeEvents<Runnable> followed =
      new SomeEvents<>() {
        @Override
        public Runnable answered(Event.Answered event) {
          return () -> Optional.ofNullable(base.checks().get(event.check())).ifPresent(gate::asked);
        }

        @Override
        public Runnable repaired(Event.Repaired event) {
          return () ->
              Optional.ofNullable(base.repairs().get(event.repair())).ifPresent(gate::repaired);
        }

        @Override
        public Runnable other(Event event) {
          return () -> {};
        }
      };

  public Exercise exercise() {
    return exercise;
  }

  public Moment moment() {
    return moment;
  }

  /** Minutes of the cards for what was done. */
  public double minutes() {
    return minutes;
  }

  public List<Slip> slips() {
    return List.copyOf(slips);
  }

  public List<Departure> departures() {
    return List.copyOf(departures);
  }

  /**
   * Repairs that were made on suspicion: none of the causes that they remove was very likely by
   * what had been found, and the plan would not have made them either. Lucky ones count too.
   */
  public List<String> guesses() {
    return List.copyOf(guesses);
  }

  public int hints() {
    return hints;
  }

  /** What is still wrong with the gate. */
  public Set<String> remaining() {
    return gate.remaining();
  }

  public boolean over() {
    return moment.state().closed().isPresent();
  }

  /** Why a check may not be made now; if it would be dangerous, that is counted. */
  public Optional<Refusal> refused(Check check) {
    return counted(check.ask(), safety.check(moment, check));
  }

  public Optional<Refusal> refused(Repair repair) {
    return counted(repair.name(), safety.repair(moment, repair));
  }

  public Optional<Refusal> refused(SetUp setUp) {
    return moment.state().work().setUps().contains(setUp.id())
        ? Optional.empty()
        : counted(setUp.name(), safety.enter(moment, setUp));
  }

  public Optional<Refusal> tryRefused() {
    return counted("Try the gate", safety.tryOut(moment));
  }

  public Optional<Refusal> finishRefused() {
    return counted("Back into service", safety.finish(moment));
  }

  public Optional<Refusal> handOverRefused() {
    return safety.leftOpen(moment.state());
  }

  private Optional<Refusal> counted(String what, Optional<Refusal> refusal) {
    refusal
        .filter(Refusal::slip)
        .ifPresent(
            r -> {
              Slip slip = new Slip(minutes, what, r.why());
              keep.accept(PracticeEntry.of(slip));
              slips.add(slip);
            });
    return refusal;
  }

  /** Looks for all dangers at once. */
  public void lookForDangers() {
    base.ordinaryChecks()
        .filter(Check::danger)
        .filter(c -> !moment.judgement().unavailable().contains(c.id()))
        .map(c -> new Event.Answered(c.id(), answer(c)))
        .forEach(this::record);
    follow();
  }

  /** Makes a check or a proof that was not refused. */
  public Answer ask(Check check) {
    if (check.kind() == Check.Kind.CHECK) {
      judge(check.id(), check.ask());
    }
    Answer answer = answer(check);
    Optional<Contradiction> jars = contradiction(check, answer);
    for (int i = 0; i < OTHER_WORLDS && jars.isPresent(); i++) {
      gate.otherwise(check);
      answer = answer(check);
      jars = contradiction(check, answer);
    }
    record(new Event.Answered(check.id(), answer));
    jars.ifPresent(j -> record(new Event.Kept(j.first(), j.second())));
    if (answer.equals(new Answer.Chosen(Check.FAIL))) {
      record(new Event.Reopened(check.id())); // the search goes on
    }
    follow();
    return answer;
  }

  private Answer answer(Check check) {
    return gate.answer(
            check,
            moment.judgement().expectation(check.id()),
            a -> interview.hear(moment, check, a).map(h -> h.finding().outcome()))
        .answer();
  }

  /** The contradiction between an answer and what is known. */
  private Optional<Contradiction> contradiction(Check check, Answer answer) {
    List<Entry> then = new ArrayList<>(entries);
    then.add(entry(new Event.Answered(check.id(), answer)));
    return interview.judgement(then).contradictions().stream()
        .filter(c -> !moment.judgement().contradictions().contains(c))
        .findFirst();
  }

  public void enter(SetUp setUp) {
    record(new Event.SetUpEntered(setUp.id(), ""));
    follow();
  }

  public void leave(SetUp setUp) {
    record(new Event.SetUpLeft(setUp.id(), ""));
    follow();
  }

  public void repair(Repair repair) {
    boolean wise = judge(repair.id(), repair.name()) || followUp(repair) || confirmed(repair);
    if (!wise) {
      keep.accept(PracticeEntry.guess(repair.id()));
      guesses.add(repair.id());
    }
    gate.repaired(repair);
    record(new Event.Repaired(repair.id(), true));
    follow();
  }

  /**
   * Tries the gate; after a repair the result is evidence.
   *
   * @return how it ran
   */
  public Event.Retested tryOut() {
    judge(BestStep.RETEST, "Try the gate");
    Event.Retested tried = gate.retest().orElseGet(() -> new Event.Retested(remaining().isEmpty()));
    record(tried);
    follow();
    return tried;
  }

  /**
   * What the plan would do next.
   *
   * @param card id of the check or repair; empty for anything else
   * @param reason why, in words; may be empty
   */
  public record Hint(
      String card, String words, String reason, List<SetUp> leave, List<SetUp> enter) {}

  /** What the plan would do next and why; the hint is counted. */
  public Hint hint() {
    BestStep best = compass.best(moment);
    Optional<Refusal> unready = unready(best.card());
    Hint hint =
        new Hint(
            best.card(),
            best.words(),
            best.reason(),
            unready.map(Refusal::leave).orElse(List.of()),
            unready.map(Refusal::enter).orElse(List.of()));
    keep.accept(PracticeEntry.hint(hint.words()));
    hints++;
    return hint;
  }

  /** Why the step of a hint could not be done in this state of the work; it is not counted. */
  private Optional<Refusal> unready(String card) {
    if (card.equals(BestStep.RETEST)) {
      return safety.tryOut(moment);
    }
    if (card.equals(BestStep.FINISH)) {
      return safety.leftBehind(moment.state());
    }
    if (card.equals(BestStep.HAND_OVER)) {
      return safety.leftOpen(moment.state());
    }
    return base.checks().containsKey(card)
        ? safety.check(moment, base.checks().get(card))
        : Optional.ofNullable(base.repairs().get(card)).flatMap(r -> safety.repair(moment, r));
  }

  public void madeSafe(Step.MakeSafe step) {
    record(step.done());
    follow();
  }

  /** Gives back the gate after it was proved: repaired, or found to have nothing wrong. */
  public void finish() {
    close(
        Ending.proved(
            entries.stream()
                .map(Entry::event)
                .flatMap(e -> e instanceof Event.Repaired r && r.done() ? Stream.of(r) : null)
                .flatMap(r -> Stream.ofNullable(base.repairs().get(r.repair())))));
  }

  public void close(Ending ending) {
    if (ending == Ending.HANDED_OVER && !moment.state().work().cured()) {
      judge(BestStep.HAND_OVER, "Hand over");
    }
    record(new Event.Closed(ending));
    follow();
  }

  private boolean confirmed(Repair repair) {
    List<String> causes = moment.belief().model().causes();
    double[] chances = moment.belief().atCallOut();
    return repair.removes().keySet().stream()
        .mapToInt(causes::indexOf)
        .anyMatch(i -> i >= 0 && chances[i] >= CONFIRMED);
  }

  /** Whether an earlier repair made this one necessary. */
  private boolean followUp(Repair repair) {
    return moment.judgement().followUps().stream().anyMatch(f -> f.card().equals(repair.id()));
  }

  /**
   * Notes a departure if the plan would have done something else; returns whether it would have
   * done the same.
   */
  private boolean judge(String card, String words) {
    Optional<Departure> departure = compass.departure(moment, card, words, minutes);
    departure.ifPresent(
        d -> {
          keep.accept(PracticeEntry.of(d));
          departures.add(d);
        });
    return departure.isEmpty();
  }

  private void record(Event event) {
    keep.accept(PracticeEntry.of(event));
    add(event);
  }

  private void add(Event event) {
    minutes += WorkTime.minutes(event, base);
    entries.add(entry(event));
  }

  private Entry entry(Event event) {
    return new Entry(
        entries.size() + 1L,
        Opening.START.plus(Duration.ofSeconds(Math.round(minutes * 60))),
        exercise.told().person(),
        event);
  }

  private void follow() {
    moment = interview.at(entries);
  }

  @Override
  public void close() {
    interview.close();
  }
}
