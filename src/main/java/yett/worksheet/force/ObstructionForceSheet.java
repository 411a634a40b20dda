package yett.worksheet.force;

import yett.calculation.ForceZone;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Input;

/** Compares a recorded force with the limits of EN 12453. Source: {@link ObstructionForce}. */
final class ObstructionForceSheet extends ForceMeaning {
  ObstructionForceSheet() {
    super("obstruction-force", "a recorded force against the limits of EN 12453");
    asks(
        Input.file("curve", "CSV file of the meter, time and force on each line"),
        Input.choice(
            "zone", "where it was recorded", Choice.each(ForceZone.class, ForceZone::words)));
    tells(
        text("verdict", "verdict").by(v -> words(force(v).verdict())),
        number("peak", Unit.NEWTON, "peak").by(v -> force(v).curve().peak().force()),
        number("peak-limit", Unit.NEWTON, "peak allowed").by(v -> force(v).zone().peakLimit()),
        number("above-150", Unit.SECOND, "time above 150 N").by(v -> force(v).dynamicPeriod()),
        number("after-5-s", Unit.NEWTON, "left 5 s after contact")
            .by(v -> force(v).afterRelease().get())
            .when(v -> force(v).contact().isPresent() && force(v).afterRelease().isPresent()),
        number("record", Unit.SECOND, "length of the record")
            .by(v -> force(v).curve().end() - force(v).curve().start()),
        number("rate", Unit.HERTZ, "samples in a second").by(v -> force(v).curve().rate()),
        number("largest-gap", Unit.SECOND, "longest time without one")
            .by(v -> force(v).curve().largestGap()));
    formula(
        "peak at most 400 N in a gap of 50 mm to 500 mm, 1400 N elsewhere; above 150 N for 0.75 s"
            + " at most, from the first to the last crossing; at most 25 N from 5 s after contact"
            + " (25 N) on; straight lines between samples");
    validity(
        "Meter with faces of 80 mm, a spring of 500 N/mm, 25 N to 2000 N, 200 samples a"
            + " second, 5 % of error, zeroed and started before the impact; a gap of more than"
            + " 6 ms between samples or a first sample over 5 N leaves it open. One record is"
            + " not a test of a gate: each point three times and averaged, at gaps of 50, 300"
            + " and 500 mm, at 50 mm, middle and 300 mm below the top.");
    source(
        "EN 12453 through summaries of a trade federation, test houses and installers: 400 N below"
            + " 500 mm, 1400 N elsewhere, 150 N within 0.75 s and 25 N after 5 s are published"
            + " there; the lower bound of 50 mm, the zone between flat faces, and counting from"
            + " contact are from memory");
    lastWord(
        "The standard itself, the meter's calibration and the person who signs for the gate decide;"
            + " in North America UL 325 asks for reversal and entrapment protection instead.");
    notes(Cautions.NEVER_A_BODY);
    draws(v -> ForcePlot.of(force(v)));
  }

  private static String words(Verdict verdict) {
    return switch (verdict) {
      case MET -> "within the limits";
      case MISSED -> "over the limits";
      case OPEN -> "open: this record cannot decide it";
    };
  }
}
