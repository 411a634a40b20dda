package yett.worksheet.sensing;

import yett.calculation.Conductor;
import yett.calculation.VehicleLoop;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Inductance, resistance and quality of a vehicle loop with its lead-in. Source: {@link
 * VehicleLoop}.
 */
final class LoopInductance extends Worksheet {
  /** Distance (m) from turn to turn in the slot, insulation included; considered judgement. */
  static final double PITCH = 0.00381;

  LoopInductance() {
    super(Subject.SENSING, "loop-inductance", "inductance and quality of a vehicle loop");
    asks(
        reading("long-side", Unit.METRE, "longer side of the loop").possible(0.3, 30),
        reading("short-side", Unit.METRE, "shorter side of the loop").possible(0.3, 30),
        whole("turns", "turns of wire").possible(1, 20).good(1, 6),
        reading("lead-in", Unit.METRE, "length of the twisted lead-in")
            .usually("15 m")
            .possible(0, 500)
            .good(0, 100),
        choice(
                "wire",
                "size of the wire",
                Choice.wire("14 AWG"),
                Choice.wire("16 AWG"),
                Choice.wire("18 AWG"),
                Choice.wire("12 AWG"))
            .usually("awg-14"),
        reading("frequency", Unit.KILOHERTZ, "frequency of the detector")
            .usually("50 kHz")
            .possible(5, 300)
            .good(10, 200),
        reading("measured", Unit.MICROHENRY, "inductance as measured at the detector's end")
            .mayBeLeftOut()
            .possible(0.1, 20000));
    refuses(
        v -> !VehicleLoop.hasRoom(v.of("long-side"), v.of("short-side"), v.whole("turns"), PITCH),
        "A loop with sides that short has no room for {turns} turns; look at the units.");
    tells(
        number("loop", Unit.MICROHENRY, "the loop itself")
            .by(
                v ->
                    VehicleLoop.inductance(
                        v.of("long-side"),
                        v.of("short-side"),
                        v.whole("turns"),
                        radius(wire(v)),
                        PITCH)),
        number("quick", Unit.MICROHENRY, "by the rule of thumb")
            .by(v -> VehicleLoop.quickInductance(perimeter(v), v.whole("turns"))),
        number("total", Unit.MICROHENRY, "with its lead-in")
            .by(v -> v.of("loop") + VehicleLoop.leadIn(v.of("lead-in"))),
        number("seen", Unit.PERCENT, "of a change seen")
            .by(v -> 100 * v.of("loop") / v.of("total")),
        number("resistance", Unit.OHM, "resistance of the copper")
            .by(v -> (v.of("turns") * perimeter(v) + 2 * v.of("lead-in")) * wire(v).at(20)),
        number("quality", Unit.ONE, "quality Q of the copper")
            .by(
                v ->
                    VehicleLoop.quality(
                        v.of("total"), v.of("resistance"), v.in("frequency", Unit.HERTZ))),
        number("height", Unit.METRE, "detects undersides up to")
            .by(v -> VehicleLoop.height(v.of("long-side"), v.of("short-side"))),
        number("clearance", Unit.METRE, "keep from moving steel")
            .by(v -> VehicleLoop.clearance(v.of("long-side"), v.of("short-side"))),
        number("deviation", Unit.PERCENT, "measured over expected")
            .by(v -> 100 * (v.of("measured") / v.of("total") - 1))
            .given("measured"));
    formula(
        "N L1(a) + 2 sum (N-k) L1(k p), L1(r) = (mu0/pi) (x ln 2x/r + y ln 2y/r + 2g - x asinh x/y"
            + " - y asinh y/x - 2(x+y)), g2 = x2 + y2; rule P/4 (N2 + N) uH, P in ft; lead-in 0.22"
            + " uH/ft; seen L/(L + Llead); Q = 2 pi f L/R");
    validity(
        "Thin wire with no steel near; reinforcement and a steel gate lower it. The rule of thumb"
            + " is within 20 % for 2 to 5 turns. Turns are taken 3.8 mm apart. Copper's Q is the"
            + " most there can be: damp and splices take from it.");
    source(
        "inductance of a rectangle, textbook (Grover); rule of thumb, lead-in 0.22 uH/ft and two"
            + " thirds of the shorter side from the loop trade, memory and common practice;"
            + " clearance from a published loop guide; Q of 5 and 5 ohm from a published"
            + " road-agency test; NEC chapter 9 table 8");
    lastWord("The detector's instructions say what inductance it takes and how the loop is laid.");
    says(
        when(
            v -> v.has("measured") && v.of("deviation") < -30,
            "Measured far under the figure: turns shorted together, fewer turns than thought, or"
                + " reinforcement close by."),
        when(
            v -> v.has("measured") && v.of("deviation") > 30,
            "Measured far over the figure: more turns or a longer lead-in than thought, or a bad"
                + " splice."),
        when(v -> v.has("measured"), "The reading fits a sound loop of this shape."),
        when(
            v -> v.of("total") < VehicleLoop.USUAL.low(),
            "Few turns: {total} is little for a detector, add a turn."),
        when(
            v -> v.of("total") > VehicleLoop.TUNES_UP_TO,
            "At {total} many detectors can no longer tune; take a turn off."),
        when(
            v -> v.of("total") > VehicleLoop.USUAL.high(),
            "At {total} it has more than gate loops usually have; if the detector does not"
                + " tune, take a turn off."),
        otherwise("A detector ought to tune to this loop."));
    says(
        when(
            v -> v.of("seen") < 67,
            "The lead-in hides a third of what the loop sees or more; shorten it or add a turn."),
        otherwise(
            "High vehicles are detected less well: test with the highest vehicle that comes."));
  }

  private static double perimeter(Values v) {
    return 2 * (v.of("long-side") + v.of("short-side"));
  }

  private static Conductor wire(Values v) {
    String size = v.choice("wire").words();
    return Conductor.AWG_STRANDED.stream()
        .filter(c -> c.size().equals(size))
        .findFirst()
        .orElseThrow();
  }

  /** Radius (m) of solid wire of a gauge: ASTM B258. */
  private static double radius(Conductor wire) {
    int gauge = Integer.parseInt(wire.size().split(" ")[0]);
    return 0.000127 * Math.pow(92, (36 - gauge) / 39.0) / 2;
  }
}
