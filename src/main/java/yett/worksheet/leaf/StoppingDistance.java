package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.Stopping;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** How far a leaf runs after the command to stop: v t + m v²/(2 F). Source: {@link Stopping}. */
final class StoppingDistance extends Worksheet {
  StoppingDistance() {
    super(Subject.LEAF, "stopping-distance", "how far the leaf runs on after the stop command");
    asks(
        Leaves.mass(),
        Leaves.speed(),
        reading("braking", Unit.NEWTON, "braking force of the drive")
            .usually("0 N")
            .possible(0, 50_000),
        reading("delay", Unit.SECOND, "time from the command until it brakes")
            .usually("0.1 s")
            .possible(0, 5),
        reading("resistance", Unit.PERCENT, "rolling resistance").usually("2 %").possible(0, 50),
        reading("grade", Unit.PERCENT, "grade in the direction it moves; downhill negative")
            .asSlope()
            .usually("0 %")
            .possible(-30, 30)
            .good(-10, 10));
    tells(
        number("distance", Unit.MILLIMETRE, "goes on for")
            .by(
                Unit.METRE,
                v -> Stopping.distance(v.of("mass"), v.of("speed"), v.of("force"), v.of("delay")))
            .when(v -> v.of("force") > 0),
        number("time", Unit.SECOND, "takes")
            .by(v -> Stopping.time(v.of("mass"), v.of("speed"), v.of("force"), v.of("delay")))
            .given("distance"),
        number("force", Unit.NEWTON, "force that stops it")
            .by(
                v ->
                    v.of("braking")
                        + Leaf.rollingForce(
                            v.of("mass"), v.fraction("resistance"), v.fraction("grade"))),
        number("energy", Unit.JOULE, "energy to take away")
            .by(v -> Leaf.kineticEnergy(v.of("mass"), v.of("speed"))));
    works(step("missing", Unit.NEWTON).by(v -> v.of("braking") - v.of("force")));
    formula(
        "x = v t + m v^2/(2 F), T = t + m v/F; F = braking + m g (c cos a + sin a), v speed, t"
            + " delay, m mass, c rolling resistance, tan a = grade");
    validity("A constant force. A chain with slack lets the leaf run on for the slack as well.");
    source(Leaves.MECHANICS + "; 2 % rolling resistance common practice");
    lastWord(Leaves.DECIDES);
    notes(Cautions.MOVING_LEAF);
    says(
        when(
                v -> !v.has("distance"),
                "It does not stop: on this grade the leaf runs on, and faster. The drive has to"
                    + " brake with more than {missing}.")
            .warning(Cautions.RELEASE),
        otherwise(
            "From the command to rest the leaf goes on for {distance} in {time}: a beam, a limit or"
                + " a stop button has to act that much earlier.",
            "If it coasts clearly further, look at brake, chain slack and grade."));
  }
}
