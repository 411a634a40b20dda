package yett.practice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.Respondent;
import yett.replay.Witness;
import yett.rules.Conclusion.Expectation;

/**
 * A gate with something wrong with it. Answers that a test case gives are used; all others are
 * drawn from the cards for the causes that are present. Two gates of the same exercise show the
 * same, in whatever order they are asked.
 */
public final class FaultyGate implements Respondent {
  private final Exercise exercise;
  private final RuleBase base;
  private final Witness witness;
  private final Noise noise;
  private final SymptomDraw shows;
  private final Readings readings;
  private final Map<String, Said> told = new HashMap<>();
  private final Map<String, Integer> asked = new HashMap<>();
  private final Map<String, Integer> worlds = new HashMap<>();

  FaultyGate(Exercise exercise, RuleBase base) {
    this.exercise = exercise;
    this.base = base;
    this.witness = new Witness(exercise.told(), base);
    this.noise = new Noise(exercise.seed());
    this.shows = new SymptomDraw(base, noise);
    this.readings = new Readings(noise);
  }

  /** The causes that are still present. */
  public Set<String> remaining() {
    return witness.remaining();
  }

  @Override
  public Said answer(
      Check check, Optional<Expectation> usual, Function<Answer, Optional<String>> meaning) {
    int time = asked.getOrDefault(check.id(), 0);
    asked(check);
    Said said = told.get(check.id());
    if (said == null) {
      said = witness.answer(check, usual, meaning);
      told.put(check.id(), said);
    }
    return Said.told(reading(check, said, usual, time));
  }

  /** Counts that a check was made; its next reading has a new random error. */
  void asked(Check check) {
    asked.merge(check.id(), 1, Integer::sum);
  }

  private Answer reading(Check check, Said said, Optional<Expectation> usual, int time) {
    Supplier<Answer> untold =
        () -> {
          if (!said.assumed()) {
            return said.answer(); // the file says that it cannot be told
          }
          int world = worlds.getOrDefault(check.id(), 0);
          return shown(check, shows.outcome(check, remaining(), world), usual, time);
        };
    return said.answer()
        .map(
            chosen -> shown(check, check.indexOf(chosen.outcome()), usual, time),
            read -> time == 0 ? read : readings.around(check, read.value(), time),
            untold,
            untold);
  }

  private Answer shown(Check check, int outcome, Optional<Expectation> usual, int time) {
    return check.measured()
        ? readings.read(check, outcome, usual, time)
        : new Answer.Chosen(check.outcomes().get(outcome).id());
  }

  /** Draws another result for a check from now on, because the one it showed is impossible. */
  void otherwise(Check check) {
    worlds.merge(check.id(), 1, Integer::sum);
  }

  @Override
  public void repaired(Repair repair) {
    witness.repaired(repair);
    told.clear();
  }

  /** The result of a try. A gate may run for now although a cause remains. */
  @Override
  public Optional<Event.Retested> retest() {
    boolean runs =
        remaining().stream()
            .noneMatch(c -> noise.even("try with " + c) < base.causes().get(c).retestFails());
    return exercise.drawn() && runs ? Optional.of(new Event.Retested(true)) : witness.retest();
  }
}
