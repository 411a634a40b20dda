package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Motor current to expect for a force: I = I0 + F v/(η V). Source: {@link Leaf}. */
final class MotorCurrent extends Worksheet {
  MotorCurrent() {
    super(Subject.LEAF, "motor-current", "motor current to expect for a force");
    asks(
        reading("force", Unit.NEWTON, "spring-scale reading, or leaf-force").possible(0, 20_000),
        Leaves.speed(),
        reading("voltage", Unit.VOLT, "voltage at the motor while it runs")
            .usually("24 V")
            .possible(6, 120),
        reading("measured", Unit.AMPERE, "current read while it runs at that speed")
            .possible(0, 200)
            .mayBeLeftOut());
    tells(
        number("low", Unit.AMPERE, "to expect, from").by(v -> usual(v).low()),
        number("high", Unit.AMPERE, "to expect, to").by(v -> usual(v).high()),
        number("alone-low", Unit.AMPERE, "of it motor alone, from")
            .by(v -> Leaf.IDLE_CURRENT.low()),
        number("alone-high", Unit.AMPERE, "of it motor alone, to")
            .by(v -> Leaf.IDLE_CURRENT.high()),
        number("power", Unit.WATT, "power that moves it").by(v -> v.of("force") * v.of("speed")));
    formula(
        "I = I0 + F v/(e V); I0 1.5 A to 2.5 A for the motor itself, F force, v speed, e efficiency"
            + " 0.6 to 0.35, V voltage; P = F v");
    validity(
        "A 24 V permanent-magnet gear motor of a gate, at steady speed. At the start it takes"
            + " several times as much. A controller that switches the motor quickly takes less from"
            + " the battery than flows in the motor: clamp a motor lead.");
    source(Leaves.MECHANICS + "; no-load current and efficiency common practice");
    lastWord("The motor's data sheet or the gate's own reading when new takes precedence.");
    notes(Cautions.MOVING_LEAF);
    says(
        when(
            v -> !v.has("measured"),
            "Expect {low} to {high} in a motor lead; note the reading as the gate's own for next"
                + " time."),
        when(
            v -> v.of("measured") > v.of("high"),
            "{measured} is more than the {low} to {high} that this force explains.",
            "The leaf is not the cause then: look at gearbox, brake, sprocket bearings and a chain"
                + " that is too tight, and at the motor itself."),
        when(
            v -> v.of("measured") < v.of("low"),
            "{measured} is less than the expected {low} to {high}.",
            "Maybe the clamp sat on a battery lead, was not set to zero, or the speed or force was"
                + " less than given."),
        otherwise(
            "{measured} fits the force: {low} to {high} is to be expected.",
            "Drive and leaf agree; if the current is still too much for the gate, work on the"
                + " leaf."));
  }

  private static Range usual(Values v) {
    Range force = new Range(v.of("force"), v.of("force"));
    return Leaf.usualCurrent(force, v.of("speed"), v.of("voltage"));
  }
}
