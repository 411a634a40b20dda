package yett.worksheet.battery;

import yett.calculation.DayOfCycles;
import yett.quantity.Unit;
import yett.worksheet.Cycle;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * A day's balance of charge with the mains on: compares I h/(charge factor) with n q + 24 Is.
 * Source: {@link DayOfCycles}.
 */
final class ChargerBalance extends Worksheet {
  ChargerBalance() {
    super(Subject.BATTERY, "charger-balance", "whether a charger keeps up with a day's cycles");
    asks(
        reading("charger-current", Unit.AMPERE, "current the charger can give").possible(0.05, 100),
        Cycle.aDay(),
        Cycle.motorCurrent(),
        Cycle.runTime(),
        Cycle.standingCurrent().usually("0.15 A"),
        reading("mains-hours", Unit.HOUR, "hours a day with mains").usually("24 h").possible(0, 24),
        reading("charge-factor", Unit.PERCENT, "charge to put in for what was taken")
            .usually("110 %")
            .possible(100, 200)
            .good(105, 130),
        Battery.capacity().mayBeLeftOut());
    remarks(
        v -> v.has("capacity") && v.of("charger-current") > 0.3 * v.of("capacity"),
        "The charger gives more than 0.3 A for each Ah; look at the battery's data sheet.");
    tells(
        number("drawn", Unit.AMPERE_HOUR, "drawn in a day")
            .by(v -> DayOfCycles.drawn(v.of("cycles"), v.of("cycle"), v.of("standing-current"))),
        number("given", Unit.AMPERE_HOUR, "given in a day, at most")
            .by(v -> v.of("charger-current") * v.of("mains-hours") / v.fraction("charge-factor")),
        number("balance", Unit.AMPERE_HOUR, "left over").by(v -> v.of("given") - v.of("drawn")),
        number("most-cycles", Unit.ONE, "cycles a day it carries")
            .by(
                v ->
                    Math.floor(
                        DayOfCycles.carried(v.of("given"), v.of("standing"), v.of("cycle")))),
        number("refill", Unit.HOUR, "hours to refill")
            .by(
                v ->
                    v.fraction("charge-factor")
                        * v.of("capacity")
                        / (v.of("charger-current") - v.of("standing-current")))
            .when(v -> v.has("capacity") && v.of("charger-current") > v.of("standing-current")));
    works(
        step("cycle", Unit.AMPERE_HOUR)
            .by(v -> DayOfCycles.cycle(v.of("motor-current"), v.of("run-time"))),
        step("standing", Unit.AMPERE_HOUR)
            .by(v -> DayOfCycles.drawn(0, v.of("cycle"), v.of("standing-current"))),
        step("missing", Unit.AMPERE_HOUR).by(v -> -v.of("balance")));
    formula(
        "given = I h/f, drawn = n I_m t/3600 + 24 Is; refill = f C/(I - Is), at least; f charge"
            + " factor, h hours with mains, n cycles, t run time, Is standing current, C capacity");
    validity(
        "Chargers taper off: the last fifth takes hours longer than the refill time says. Lead-acid"
            + " should not be charged with more than about 0.3 A for each Ah unless its data sheet"
            + " says so.");
    source(
        "balance of charge; 110 % and 0.3 A for each Ah from a battery maker's charging"
            + " instructions");
    lastWord(Battery.DATA_SHEET);
    says(
        when(
            v -> v.of("balance") < 0,
            "The charger falls behind by {missing} a day: batteries that are always low need no new"
                + " batteries but fewer cycles, less standing draw or a stronger charger."),
        otherwise(
            "The charger keeps up; batteries that are low all the same point to the charger's"
                + " output, a joint, or worn blocks."));
    says("It carries up to {most-cycles} cycles a day.");
  }
}
