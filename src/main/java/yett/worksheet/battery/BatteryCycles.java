package yett.worksheet.battery;

import yett.calculation.BatteryCapacity;
import yett.calculation.DayOfCycles;
import yett.quantity.Unit;
import yett.worksheet.Cycle;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Number of cycles that a pair of batteries supplies without mains. A cycle draws I t; at a current
 * above the rated one it counts (I H/C)^(k-1) times as much, as in Peukert's law. Source: {@link
 * DayOfCycles}, {@link BatteryCapacity}.
 */
final class BatteryCycles extends Worksheet {
  BatteryCycles() {
    super(Subject.BATTERY, "battery-cycles", "cycles the batteries can drive without mains");
    asks(
        Battery.capacity(),
        Cycle.motorCurrent(),
        Cycle.runTime(),
        Cycle.standingCurrent().usually("0.15 A"),
        reading("per-hour", Unit.ONE, "cycles an hour").usually("4").possible(0, 120),
        Battery.charge(),
        Battery.temperature(),
        Battery.age(),
        Battery.life(),
        Battery.exponent());
    refuses(v -> Battery.left(v) <= 0, Battery.NOTHING_LEFT);
    refuses(
        v -> v.of("per-hour") * v.of("run-time") > 3600,
        "So many cycles do not fit into an hour: check per-hour and run-time.");
    tells(
        number("cycle", Unit.AMPERE_HOUR, "charge of one cycle")
            .by(v -> DayOfCycles.cycle(v.of("motor-current"), v.of("run-time"))),
        number("nonstop", Unit.ONE, "cycles without a pause")
            .by(v -> Math.floor(v.of("left") / v.of("heavy-cycle"))),
        number("cycles", Unit.ONE, "cycles at that pace")
            .by(v -> Math.floor(v.of("per-hour") * v.of("left") / v.of("draw")))
            .given("hours"),
        number("hours", Unit.HOUR, "hours at that pace")
            .by(v -> v.of("left") / v.of("draw"))
            .when(v -> v.of("draw") > 0),
        number("standing", Unit.HOUR, "hours without any cycle")
            .by(v -> v.of("left") / v.of("standing-current"))
            .when(v -> v.of("standing-current") > 0));
    works(
        step("left", Unit.AMPERE_HOUR)
            .by(
                v ->
                    v.of("capacity")
                        * Battery.left(v)
                        * BatteryCapacity.atTemperature(Battery.held(v), 20)),
        step("heavy-cycle", Unit.AMPERE_HOUR)
            .by(
                v ->
                    v.of("cycle")
                        * Math.max(
                            1,
                            Math.pow(
                                20 * v.of("motor-current") / v.of("left"), v.of("peukert") - 1))),
        step("draw", Unit.AMPERE)
            .by(v -> v.of("per-hour") * v.of("heavy-cycle") + v.of("standing-current")),
        step("days", Unit.DAY).by(v -> v.in("hours", Unit.DAY)));
    formula(
        "hours = C/(n q f + Is); q = I t/3600, f = (20 h I/C)^(k-1), at least 1; C = rated x charge"
            + " x (1 - 0.2 age/life) x capacity at temperature; n cycles an hour, Is standing"
            + " current");
    validity(
        "A cautious estimate: batteries recover between cycles, which Peukert's law"
            + " leaves out. The controller may cut out earlier, at its own low-voltage limit,"
            + " when the motor starts.");
    source(
        "balance of charge with Peukert's law; capacity by temperature from battery data sheets;"
            + " age from common practice");
    lastWord(
        "What a gate must do when the supply fails, and how long, is for the local code and the"
            + " fire service where it stands in an escape or access way.");
    says(
        when(
            v -> !v.has("hours"),
            "Without cycles and standing current they last until they discharge themselves."),
        when(
            v -> v.of("hours") >= 48,
            "After the mains fails it goes on for about {hours} ({days}), {cycles} cycles at this"
                + " pace."),
        otherwise(
            "After the mains fails it goes on for about {hours}, {cycles} cycles at this pace."));
    says(
        when(
            v -> v.has("hours"),
            "A gate that gives up after a few cycles has batteries that are flat or worn, whatever"
                + " they show at rest."));
  }
}
