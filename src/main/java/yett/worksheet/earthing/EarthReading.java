package yett.worksheet.earthing;

import yett.quantity.Unit;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Compares a measured earth resistance with the limit in the code. Source: NEC 250.53. */
final class EarthReading extends Worksheet {
  EarthReading() {
    super(Subject.EARTHING, "earth-reading", "a measured rod against the code's figure");
    asks(
        reading("measured", Unit.OHM, "resistance to earth as measured").possible(0.01, 100000),
        whole("rods", "rods that were joined while measuring").usually("1").possible(1, 24),
        Rod.limit(),
        reading("mains", Unit.VOLT, "mains voltage to earth").usually("120 V").possible(10, 500),
        reading("breaker", Unit.AMPERE, "breaker of the circuit").usually("15 A").possible(1, 400));
    tells(
        number("margin", Unit.OHM, "below the figure").by(v -> v.of("limit") - v.of("measured")),
        text("verdict", "verdict")
            .by(
                v ->
                    v.of("margin") >= 0
                        ? "within the figure"
                        : v.whole("rods") == 1 ? "add a second rod" : "above, but supplemented"),
        number("fault-current", Unit.AMPERE, "fault current by earth")
            .by(v -> v.of("mains") / v.of("measured")));
    formula("limit - measured; fault current through the earth alone V/R");
    validity(
        "Read by the fall-of-potential method with the rod taken off, in the driest season if it is"
            + " to hold all year. A clamp tester needs a loop through other earths. The code's 25"
            + " ohm is for a single rod, plate or pipe; with a second one it asks for no figure.");
    source(
        "NEC 250.53(A)(2) with its exception (25 ohm); equipment grounding by NEC 250.4(A)(5), from"
            + " memory; Ohm's law");
    lastWord(Rod.DECIDES + " Other codes name other figures, or a loop impedance instead.");
    notes(Rod.LIVE_EARTH);
    says(
        when(v -> v.of("margin") >= 0, "The figure is met."),
        when(
            v -> v.whole("rods") == 1,
            "A single rod above the figure needs a second one, six feet (1.8 m) away or more."),
        otherwise(
            "With more than one rod the code asks for no figure; lower is better for surges."));
    says(when(v -> v.isNear("margin", 0), "The uncertainty of the reading spans the figure."));
    says(
        when(
            v -> v.of("fault-current") < 5 * v.of("breaker"),
            "Through the earth alone a fault would draw {fault-current}, too little to trip a"
                + " breaker of {breaker} at once: the protective conductor to the panel has to be"
                + " there."),
        otherwise("Through the earth alone a fault would draw {fault-current}."));
  }
}
