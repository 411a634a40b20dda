package yett.record.handout;

import java.time.ZoneId;
import java.util.List;
import yett.interview.course.Interview;
import yett.interview.course.Interview.RankedCause;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.record.drawing.GateShape;
import yett.record.drawing.Spot;
import yett.record.drawing.Spots;

/**
 * What was found and measured, and where. All pages of a hand-out use the same numbers for the
 * places.
 *
 * @param causes what was wrong, as far as it is likely; what was believed most comes first
 */
record Findings(List<RankedCause> causes, List<Measured> readings, GateShape shape, Spots spots) {
  /** A cause with a smaller chance is no finding. */
  static final double FOUND = 0.5;

  static Findings of(Moment moment, RuleBase base, ZoneId zone) {
    GateShape shape = GateShape.of(moment, base);
    Spots spots = new Spots(shape);
    List<RankedCause> causes =
        moment.state().told().complaints().isEmpty()
            ? List.of()
            : Interview.ranking(moment, base).stream().filter(r -> r.chance() >= FOUND).toList();
    List<Measured> readings = Measured.of(moment, base, zone);
    causes.forEach(r -> spots.number(Spot.of(r.cause())));
    readings.forEach(r -> spots.number(r.spot()));
    return new Findings(causes, readings, shape, spots);
  }
}
