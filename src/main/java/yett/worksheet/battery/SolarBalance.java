package yett.worksheet.battery;

import yett.calculation.BatteryCapacity;
import yett.calculation.DayOfCycles;
import yett.quantity.Unit;
import yett.worksheet.Cycle;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * A day's balance of energy on a solar gate: compares P h η with n V I t + 24 V Is. Source: {@link
 * DayOfCycles}.
 */
final class SolarBalance extends Worksheet {
  SolarBalance() {
    super(Subject.BATTERY, "solar-balance", "whether the sun keeps up with a day's cycles");
    asks(
        reading("panel", Unit.WATT, "power of all panels, as rated").possible(1, 5000),
        reading("sun-hours", Unit.HOUR, "hours of full sun a day, in the darkest month")
            .possible(0.1, 10),
        Cycle.aDay(),
        Cycle.motorCurrent(),
        Cycle.runTime(),
        Cycle.standingCurrent().usually("0.05 A"),
        reading("share", Unit.PERCENT, "share of the panel's power that gets stored")
            .usually("60 %")
            .possible(5, 100)
            .good(40, 80),
        reading("battery-voltage", Unit.VOLT, "voltage of the batteries")
            .usually("24 V")
            .possible(10, 60),
        Battery.capacity().mayBeLeftOut());
    tells(
        number("harvest", Unit.WATT_HOUR, "stored in a day")
            .by(v -> DayOfCycles.harvest(v.of("panel"), v.of("sun-hours"), v.fraction("share"))),
        number("need", Unit.WATT_HOUR, "needed in a day")
            .by(
                v ->
                    v.of("battery-voltage")
                        * DayOfCycles.drawn(
                            v.of("cycles"), v.of("cycle"), v.of("standing-current"))),
        number("balance", Unit.WATT_HOUR, "left over").by(v -> v.of("harvest") - v.of("need")),
        number("most-cycles", Unit.ONE, "cycles a day it carries")
            .by(
                v ->
                    Math.floor(
                        DayOfCycles.carried(
                            v.of("harvest"),
                            v.of("standing"),
                            v.of("battery-voltage") * v.of("cycle")))),
        number("least-panel", Unit.WATT, "panel for these cycles")
            .by(v -> v.of("need") / (v.of("sun-hours") * v.fraction("share"))),
        number("dark-days", Unit.DAY, "days without sun")
            .by(
                v ->
                    BatteryCapacity.WORN
                        * v.of("battery-voltage")
                        * v.of("capacity")
                        / v.of("need"))
            .when(v -> v.has("capacity") && v.of("need") > 0));
    works(
        step("cycle", Unit.AMPERE_HOUR)
            .by(v -> DayOfCycles.cycle(v.of("motor-current"), v.of("run-time"))),
        step("standing", Unit.WATT_HOUR)
            .by(
                v ->
                    v.of("battery-voltage")
                        * DayOfCycles.drawn(0, v.of("cycle"), v.of("standing-current"))),
        step("missing", Unit.WATT_HOUR).by(v -> -v.of("balance")));
    formula(
        "stored = P h e, needed = V (n I t/3600 + 24 Is); P panel, h hours of 1000 W/m2, e share"
            + " stored, n cycles, I motor current, t run time, Is standing current; days without"
            + " sun = 0.8 C V/needed");
    validity(
        "Averages over a month; a foggy week is worse than its month. Sun hours are those on the"
            + " panel's own slope, unshaded: one shaded cell can halve a panel.");
    source(
        "balance of energy, textbook; a share of 0.5 to 0.7 stored (heat, dirt, wiring, a charge"
            + " controller that does not track, charging losses) and a depth of 80 % from common"
            + " practice");
    lastWord(
        "Sun hours of the place come from a published solar atlas; the data sheets of"
            + " panel, controller and battery take precedence.");
    says(
        when(
            v -> v.of("balance") < 0,
            "The sun falls behind by {missing} a day: batteries run down however good they"
                + " are. {least-panel} of panel would be enough."),
        otherwise("The sun keeps up in that month, with {balance} a day to spare."));
    says(
        when(
            v -> v.of("standing") > v.of("need") / 2,
            "More than half goes into the standing current: look for a receiver, a loop"
                + " detector or a light that never sleeps."));
  }
}
