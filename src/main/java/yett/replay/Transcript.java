package yett.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.replay.Replayed.Kept;
import yett.replay.Replayed.Looked;
import yett.replay.Replayed.Meaning;
import yett.replay.Replayed.Mended;
import yett.replay.Replayed.Proved;
import yett.replay.Replayed.Ranked;
import yett.replay.Replayed.Taken;
import yett.replay.Replayed.Why;
import yett.rules.Conclusion.Finding;

/** Records a run step by step. */
final class Transcript {
  /** Least chance of a cause that is included in results. */
  private static final double LEAST = 0.001;

  private final RuleBase base;
  private final boolean beliefs;
  private final List<Taken> steps = new ArrayList<>();
  private final List<Mended> repairs = new ArrayList<>();
  private final List<Proved> proofs = new ArrayList<>();
  private final List<Kept> contradictions = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> unsafe = new ArrayList<>();
  private final List<Look> looks = new ArrayList<>();

  /** Completes the step that was begun, given the moment after it. */
  private Function<Moment, Taken> begun;

  /** A look of the current round with the event that answers it. */
  record Look(String check, String answer, boolean assumed, long event) {}

  /**
   * @param beliefs whether to record the belief after each step
   */
  Transcript(RuleBase base, boolean beliefs) {
    this.base = base;
    this.beliefs = beliefs;
  }

  /** Begins a step that an event answers; {@link #finish} completes it. */
  void begin(
      String kind,
      String id,
      String asked,
      Why why,
      String answer,
      boolean assumed,
      long number,
      double minutes) {
    int step = steps.size() + 1;
    looks.clear();
    begun =
        moment ->
            new Taken(
                step,
                kind,
                id,
                asked,
                why,
                answer,
                assumed,
                looks.isEmpty() ? meaning(moment, number) : Optional.empty(),
                beliefs ? belief(moment) : Map.of(),
                ResultNumbers.minutes(minutes),
                looks.stream().map(l -> looked(moment, l)).toList());
  }

  /** Adds a look to the current round. */
  void looked(Look look) {
    looks.add(look);
  }

  /**
   * Completes the step that was begun.
   *
   * @param moment after the step
   */
  void finish(Moment moment) {
    steps.add(begun.apply(moment));
  }

  private Looked looked(Moment moment, Look look) {
    return new Looked(look.check(), look.answer(), look.assumed(), meaning(moment, look.event()));
  }

  private Optional<Meaning> meaning(Moment moment, long number) {
    return moment.judgement().finding(number).map(this::meaning);
  }

  private Meaning meaning(Finding finding) {
    Check check = base.checks().get(finding.check());
    List<String> all = new ArrayList<>(finding.also());
    all.add(finding.outcome());
    String words =
        all.stream()
            .map(o -> check.outcomes().get(check.indexOf(o)).text())
            .collect(Collectors.joining(", and also "));
    return new Meaning(finding.outcome(), finding.also(), words, finding.reason().words());
  }

  private Map<String, Double> belief(Moment moment) {
    Map<String, Double> belief = new LinkedHashMap<>();
    ranking(moment).forEach(r -> belief.put(r.cause(), r.chance()));
    return belief;
  }

  List<Ranked> ranking(Moment moment) {
    return Interview.ranking(moment, base).stream()
        .filter(r -> r.chance() >= LEAST)
        .map(r -> new Ranked(r.cause().id(), ResultNumbers.chance(r.chance())))
        .toList();
  }

  void note(String words) {
    notes.add(words);
  }

  void unsafe(String words) {
    unsafe.add(words);
  }

  void mended(Mended repair) {
    repairs.add(repair);
  }

  /** Records the retest after the last repair. */
  void tried(boolean cured) {
    int last = repairs.size() - 1;
    repairs.set(last, new Mended(repairs.get(last).repair(), Optional.of(cured)));
  }

  void proved(Proved proof) {
    proofs.add(proof);
  }

  void kept(Kept contradiction) {
    contradictions.add(contradiction);
  }

  List<Taken> steps() {
    return List.copyOf(steps);
  }

  List<Mended> repairs() {
    return List.copyOf(repairs);
  }

  List<Proved> proofs() {
    return List.copyOf(proofs);
  }

  List<Kept> contradictions() {
    return List.copyOf(contradictions);
  }

  List<String> unsafe() {
    return List.copyOf(unsafe);
  }

  List<String> notes() {
    return List.copyOf(notes);
  }
}
