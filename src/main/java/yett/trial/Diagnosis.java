package yett.trial;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.belief.Belief;
import yett.belief.Observation;
import yett.belief.Sensitivity;
import yett.belief.Sensitivity.Entry;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.replay.Replayed;

/**
 * What the diagnosis of a case depends on when the first repair is begun, or at the end if there is
 * no repair. Until then the gate is as it was found.
 *
 * @param slopes by number: the decibans, without sign, by which a right cause moves for each
 *     deciban on the number; of several right causes the largest
 * @param turns numbers of which half or twice the odds would put another cause first
 */
record Diagnosis(String name, Map<Entry, Double> slopes, Set<Entry> turns) {
  /** Natural logarithm of the factor by which a judgement of odds may be wrong. */
  private static final double OFF = Math.log(2);

  /**
   * @param right the causes that are really present; empty for a case that is not judged by them
   */
  static Diagnosis of(Expertise expertise, Replayed replayed, Set<String> right) {
    Map<Entry, Double> slopes = new HashMap<>();
    Set<Entry> turns = new HashSet<>();
    if (!right.isEmpty()) {
      Moment moment = beforeRepair(expertise, replayed.moment());
      Sensitivity sensitivity = new Sensitivity(moment.belief(), observations(moment));
      List<String> open = right.stream().filter(c -> !certain(moment.belief(), c)).toList();
      List<RankedCause> ranking = Interview.ranking(moment, expertise.base());
      RankedCause first = ranking.get(0);
      RankedCause second = ranking.get(1);
      Sensitivity.All all = sensitivity.of(open, List.of(first.cause().id(), second.cause().id()));
      all.ofLogOdds()
          .forEach(
              slope -> slope.forEach((entry, s) -> slopes.merge(entry, Math.abs(s), Math::max)));
      turns.addAll(turns(all.ofRatio(), first.chance(), second.chance()));
      turns.forEach(entry -> slopes.putIfAbsent(entry, 0.0));
    }
    return new Diagnosis(replayed.name(), slopes, turns);
  }

  private static boolean certain(Belief belief, String cause) {
    double chance = belief.atCallOut(cause);
    return !(chance > 0 && chance < 1);
  }

  private static Moment beforeRepair(Expertise expertise, Moment end) {
    int count = 0;
    while (count < end.entries().size()
        && !(end.entries().get(count).event() instanceof Event.Repaired)) {
      count++;
    }
    try (Interview interview = expertise.newInterviewWithoutConflicts()) {
      return count == end.entries().size() ? end : interview.at(end.entries().subList(0, count));
    }
  }

  private static List<Observation> observations(Moment moment) {
    return moment.judgement().findings().stream()
        .map(f -> new Observation(f.check(), f.weights()))
        .toList();
  }

  private static Set<Entry> turns(Map<Entry, Double> slopes, double first, double second) {
    if (!(second > 0)) {
      return Set.of();
    }
    double lead = Math.log(first / second);
    Set<Entry> turns = new HashSet<>();
    slopes.forEach(
        (entry, slope) -> {
          if (Math.abs(slope) * OFF >= lead) {
            turns.add(entry);
          }
        });
    return turns;
  }
}
