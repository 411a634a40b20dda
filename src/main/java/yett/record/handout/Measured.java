package yett.record.handout;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yett.interview.event.Answer;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.record.drawing.Spot;
import yett.rules.Conclusion.Finding;
import yett.wording.InspectionWords;
import yett.wording.UsualRangeWords;
import yett.wording.Wording;

/**
 * What was measured in one check: as it was found and as it was left.
 *
 * @param asked what was measured
 * @param found what was read before the repairs that could have changed it, or that it was not
 *     measured
 * @param left the last reading, if no such repair was made after it, or that it was not measured
 *     again
 * @param usual the range on this gate; empty if none is known
 * @param baseline what it read when the gate was in order, and when; empty if that is not known
 * @param verdict in plain words
 * @param fine whether the last reading is in order; empty if nobody can say
 */
record Measured(
    String asked,
    String found,
    String left,
    String usual,
    String baseline,
    String verdict,
    Optional<Boolean> fine,
    Optional<Spot> spot) {

  /** All readings of a case in the order of the work, one line for each check. */
  static List<Measured> of(Moment moment, RuleBase base, ZoneId zone) {
    Map<String, List<Answered>> byCheck = new LinkedHashMap<>();
    for (Answered a : moment.state().answers()) {
      Check check = base.checks().get(a.check());
      if (check != null && check.measured() && a.answer().reading().isPresent()) {
        byCheck.computeIfAbsent(a.check(), c -> new ArrayList<>()).add(a);
      }
    }
    return byCheck.entrySet().stream()
        .map(e -> row(moment, base, zone, e.getKey(), e.getValue()))
        .toList();
  }

  private static Measured row(
      Moment moment, RuleBase base, ZoneId zone, String id, List<Answered> readings) {
    Check check = base.checks().get(id);
    Measures measures = check.measures().orElseThrow();
    Answered first = readings.get(0);
    Answered last = readings.get(readings.size() - 1);
    Optional<Finding> finding = moment.judgement().finding(last.event());
    Predicate<Answered> stale = a -> moment.state().work().changedSince(a.event(), id, base);
    boolean repaired = stale.test(last);
    Optional<Boolean> fine =
        finding.map(f -> check.indexOf(f.outcome()) == 0).filter(f -> f || !repaired);
    boolean untouched = !moment.state().work().changedBefore(first.event(), id, base);
    List<Answered> found =
        readings.stream().filter(a -> stale.test(a) || a == first && untouched).toList();
    return new Measured(
        check.name(),
        shown(measures, found),
        repaired ? "not measured again" : found.contains(last) ? "as found" : shown(measures, last),
        usual(moment, check, first, last),
        new InspectionWords(base, moment, zone).baseline(check).orElse(""),
        before(moment, check, first, last)
            + fine.map(f -> f ? "in order" : "not in order: " + band(finding.get()))
                .or(() -> finding.map(f -> band(f) + "; repaired since"))
                .orElse("no judgement"),
        fine,
        Spot.of(check));
  }

  /**
   * The range by which the reading was judged. A repair may end a baseline and so widen the range;
   * then there are two.
   */
  private static String usual(Moment moment, Check check, Answered first, Answered last) {
    String left = UsualRangeWords.of(moment, check, last.event()).orElse("none known");
    String found = UsualRangeWords.of(moment, check, first.event()).orElse(left);
    return found.equals(left) || first.epoch() > 0 ? left : found + " as found; now " + left;
  }

  /**
   * The verdict on the first reading if it was out of the ordinary and something was repaired
   * since, so that one sees what was put right.
   */
  private static String before(Moment moment, Check check, Answered first, Answered last) {
    return moment
        .judgement()
        .finding(first.event())
        .filter(f -> first.epoch() < last.epoch() && check.indexOf(f.outcome()) > 0)
        .map(f -> band(f) + "; now ")
        .orElse("");
  }

  private static String band(Finding finding) {
    return Wording.spaced(finding.outcome());
  }

  /** What was read before repairs that could have changed it. */
  private static String shown(Measures measures, List<Answered> readings) {
    return readings.isEmpty()
        ? "not measured"
        : readings.stream()
            .map(a -> shown(measures, a))
            .distinct()
            .collect(Collectors.joining(", then "));
  }

  private static String shown(Measures measures, Answered a) {
    Answer.Read read = a.answer().reading().orElseThrow();
    return measures.asRead(read.typed(), read.value());
  }
}
