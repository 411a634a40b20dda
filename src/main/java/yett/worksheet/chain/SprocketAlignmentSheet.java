package yett.worksheet.chain;

import yett.calculation.SprocketAlignment;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Checks whether sprocket, idlers and brackets are in line. Source: {@link SprocketAlignment}. */
final class SprocketAlignmentSheet extends Worksheet {
  SprocketAlignmentSheet() {
    super(Subject.CHAIN, "sprocket-alignment", "sprocket, idler or bracket out of line");
    asks(
        reading("distance", Unit.METRE, "distance between their centres").possible(0.05, 30),
        reading("offset", Unit.MILLIMETRE, "how far one face is off the line of the other")
            .possible(0, 500),
        reading("lean", Unit.MILLIMETRE, "how far a shaft leans over that length")
            .possible(0, 100)
            .mayBeLeftOut(),
        reading("lean-length", Unit.MILLIMETRE, "length along the shaft for lean")
            .usually("300 mm")
            .possible(20, 2000));
    tells(
        number("allowed", Unit.MILLIMETRE, "offset to set it to")
            .by(Unit.METRE, v -> SprocketAlignment.permissibleOffset(v.of("distance"))),
        number("runs-well", Unit.MILLIMETRE, "a slow chain tolerates")
            .by(v -> SprocketAlignment.RUNS_WELL * v.of("allowed")),
        number("angle", Unit.DEGREE, "chain leaves at")
            .by(v -> SprocketAlignment.chainAngle(v.metres("offset"), v.of("distance"))),
        number("lean-allowed", Unit.MILLIMETRE, "lean allowed")
            .by(Unit.METRE, v -> SprocketAlignment.permissibleLean(v.metres("lean-length"))));
    formula(
        "to set it to: 1 mm up to 1 m, distance/1000 up to 10 m, 10 mm beyond; a chain below 0.5"
            + " m/s runs up to twice that; angle = atan(offset/distance); lean allowed:"
            + " length/300");
    validity(
        "Straight edge or string against the machined faces, the chain off or slack. Wheels that"
            + " float on their shaft are pushed to where they run.");
    source(
        "Complete Guide to Chain, 7.1.2.2 and fig. 7.7; a chain maker's guide allows 0.2 mm per 100"
            + " mm below 0.5 m/s, which is twice as much; five times as the end of what is safe is"
            + " a considered judgement");
    lastWord(Chains.DECIDES);
    notes(Cautions.CHAIN);
    says(
        when(
            v -> v.of("offset") <= v.of("allowed"),
            "They are in line: up to {allowed} is allowed at this distance."),
        when(
            v -> v.of("offset") <= v.of("runs-well"),
            "They are in line: up to {allowed} is allowed at this distance where the line is"
                + " set, and twice that where a chain runs as slowly as a gate's; set it when it is"
                + " next worked on."),
        otherwise(
            "Out of line: {offset} where {runs-well} is the most at which a gate's chain runs well,"
                + " and {allowed} is what it is set to."));
    says(
        when(v -> v.of("offset") <= v.of("runs-well")),
        when(
            v -> v.of("offset") <= SprocketAlignment.CLIMBS * v.of("allowed"),
            "The chain will wear its side plates; put it in line at this visit."),
        otherwise(
            "The chain climbs the teeth on one side and can come off; put it in line before the"
                + " gate runs again."));
    says(
        when(v -> !v.has("lean")),
        when(v -> v.of("lean") <= v.of("lean-allowed"), "The shaft is upright enough."),
        otherwise(
            "The shaft leans more than the {lean-allowed} allowed: shim the operator or its pad,"
                + " then look at the line again."));
  }
}
