package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * The rolling resistance of track and wheels from a spring scale: c = (F/(m g) - sin a)/cos a.
 * Source: {@link Leaf}.
 */
final class ScaleReading extends Worksheet {
  /** Tolerance for a reading at the limit after rounding to four figures. */
  private static final double ROUNDED = 1.001;

  ScaleReading() {
    super(Subject.LEAF, "scale-reading", "what a spring scale says about track and wheels");
    asks(
        reading("force", Unit.NEWTON, "highest steady reading at a slow walk").possible(0, 20_000),
        Leaves.mass(),
        Leaves.support(),
        Leaves.grade(),
        choice(
                "direction",
                "which way it was pulled",
                new Choice("up", "uphill, or on the level"),
                new Choice("down", "downhill"))
            .usually("up"));
    tells(
        number("resistance", Unit.PERCENT, "rolling resistance")
            .by(v -> 100 * Leaf.rollingResistance(v.of("mass"), v.of("force"), grade(v))),
        number("usual-low", Unit.NEWTON, "usual, from").by(v -> usual(v).low()),
        number("usual-high", Unit.NEWTON, "usual, to").by(v -> usual(v).high()),
        number("beyond", Unit.NEWTON, "beyond that")
            .by(v -> v.of("force") - v.of("usual-high"))
            .when(v -> v.of("force") > v.of("usual-high") * ROUNDED));
    works(
        step("rolls-from", Unit.PERCENT).by(v -> 100 * Leaves.resistance(v).low()),
        step("rolls-to", Unit.PERCENT).by(v -> 100 * Leaves.resistance(v).high()));
    formula(
        "c = (F/(m g) - sin a)/cos a; usual F = m g (c cos a + sin a); F scale, m mass, tan a ="
            + " grade, downhill negative");
    validity(
        "Leaf released from the drive, scale level with the chain and along the travel, slow and"
            + " steady; the start takes more. Do it both ways: half the difference is the grade.");
    source(Leaves.MECHANICS + "; " + Leaves.RESISTANCE);
    lastWord(Leaves.DECIDES);
    notes(Cautions.RELEASE);
    says(
        when(
            v -> v.of("resistance") < 0,
            "So little is not possible: the slope alone takes more. Check mass, grade and"
                + " direction, and zero the scale."),
        when(
            v -> v.of("resistance") < v.of("rolls-from"),
            "The leaf rolls very easily: {resistance} of its weight, usual are {rolls-from} to"
                + " {rolls-to}.",
            "Maybe the leaf is lighter than thought, or a slope helps; pull it the other way too."),
        when(
            v -> v.has("beyond"),
            "The leaf drags: {resistance} of its weight, usual are {rolls-from} to {rolls-to}."
                + " About {beyond} come from dirt in the track, wheels, guides or a bent rail."),
        otherwise(
            "The leaf rolls as it should: {resistance} of its weight, usual are {rolls-from} to"
                + " {rolls-to}."));
    says(
        when(
            v -> v.has("beyond") && v.of("resistance") > 6,
            "So much is no longer rolling: look for a bent rail, a seized wheel or a guide that"
                + " binds, and do not turn the force up to hide it."),
        when(
            v -> v.has("beyond"),
            "Clean the track, turn each wheel by hand, and see that the guides are free."));
    doubts("resistance", "rolls-from", "rolls-to");
  }

  /** The grade in the direction of the pull; downhill negative. */
  private static double grade(Values v) {
    return v.chose("direction", "up") ? v.fraction("grade") : -v.fraction("grade");
  }

  private static Range usual(Values v) {
    return Leaf.usualForce(v.of("mass"), Leaves.resistance(v), grade(v));
  }
}
