package yett.worksheet.battery;

import yett.calculation.LeadAcid;
import yett.calculation.PairOfBatteries;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Internal resistance from two steady loads: Ri = (V1 - V2)/(I2 - I1). Source: {@link LeadAcid},
 * {@link PairOfBatteries}.
 */
final class BatteryResistance extends Worksheet {
  BatteryResistance() {
    super(Subject.BATTERY, "battery-resistance", "internal resistance from a loaded reading");
    asks(
        reading("voltage", Unit.VOLT, "voltage at the posts with little or no load")
            .possible(1, 32),
        reading("current", Unit.AMPERE, "current then").usually("0 A").possible(-5, 100),
        reading("loaded-voltage", Unit.VOLT, "voltage 5 to 15 s after the load came on")
            .possible(0, 32),
        reading("loaded-current", Unit.AMPERE, "current then, the larger one").possible(0.1, 1000),
        choice(
                "across",
                "what it was read across",
                new Choice("pair", "the 24 V pair with its cables"),
                new Choice("block", "one 12 V block"))
            .usually("pair"),
        Battery.temperature(),
        Battery.capacity().mayBeLeftOut(),
        reading("baseline", Unit.MILLIOHM, "the same reading when it was new")
            .mayBeLeftOut()
            .possible(0.5, 1000));
    refuses(
        v -> v.of("loaded-current") <= v.of("current") || v.of("loaded-voltage") >= v.of("voltage"),
        "Under the larger current the voltage must be the lower one; maybe the two readings are"
            + " swapped, or the charger was still on.");
    remarks(
        v -> v.of("change") < 0.2,
        "A step of {change} is hardly more than a meter can resolve; load the battery harder.");
    tells(
        number("resistance", Unit.MILLIOHM, "internal resistance")
            .by(
                Unit.OHM,
                v ->
                    LeadAcid.internalResistance(
                        v.of("voltage"),
                        v.of("current"),
                        v.of("loaded-voltage"),
                        v.of("loaded-current"))),
        number("usual", Unit.MILLIOHM, "usual for it, at most")
            .by(Unit.OHM, BatteryResistance::usual)
            .when(v -> v.has("capacity") || v.chose("across", "pair")),
        number("rise", Unit.PERCENT, "over the baseline")
            .by(v -> 100 * (v.of("resistance") / v.of("baseline") - 1))
            .given("baseline"),
        number("fall", Unit.VOLT, "fall at 20 A").by(v -> 20 * v.in("resistance", Unit.OHM)),
        number("short-circuit", Unit.AMPERE, "short-circuit current")
            .by(v -> v.of("voltage") / v.in("resistance", Unit.OHM) + v.of("current")));
    works(
        step("change", Unit.VOLT).by(v -> v.of("voltage") - v.of("loaded-voltage")),
        phrase("such")
            .by(v -> v.has("capacity") ? "blocks of " + v.asTyped("capacity") : "small blocks"));
    formula(
        "Ri = (V1 - V2)/(I2 - I1); usual for a block at most 320 mohm/C, 25 mohm for small ones,"
            + " for a pair twice that and 10 mohm of cables; C capacity in Ah, 1 % more for each"
            + " degree below 15 degC; sound up to 1.2 times the usual; short circuit V/Ri, V1 + Ri"
            + " I1 without load");
    validity(
        "Direct current, both readings at the same posts, steady and at one state of charge, some"
            + " volts or amperes apart. Readings of one meter share most of their error, which"
            + " makes the true uncertainty smaller than the one shown. Meters that send a test"
            + " signal give other values: compare like with like.");
    source(
        "textbook circuit, a method of the kind of IEC 60896-21; 20 % over its own"
            + " baseline calls for action after IEEE 1188 as paraphrased; under 8 mohm for a"
            + " block of 40 Ah from a data sheet, other capacities in proportion by considered"
            + " judgement; 60 mohm for a pair of small blocks with cables from memory");
    lastWord(Battery.DATA_SHEET);
    notes(
        Battery.SHORT_CIRCUIT,
        Note.warning(
            "The gate moves while it is the load. Crushing. Keep the opening clear and one hand at"
                + " the stop."));
    says(
        when(
            v -> v.has("rise") && v.of("rise") > 20,
            "{rise} over its baseline: it is wearing out or a link has worked loose; clean and"
                + " tighten, read again, then load test."),
        when(v -> v.has("rise"), "Within a fifth of its baseline: no sign of wear."),
        when(
            v -> !v.has("usual"),
            "Keep it as the baseline of this block; a rise tells more than the value."),
        when(
            v -> v.of("resistance") > PairOfBatteries.SOUND * v.of("usual"),
            "More than sound {such} have: feel for a warm lug and read across each link, then"
                + " suspect the blocks."),
        when(
            v -> v.of("resistance") > v.of("usual"),
            "A little more than is usual for {such}: still sound; read it again at the next"
                + " visit."),
        when(v -> v.has("capacity"), "As low as it ought to be for {such}."),
        otherwise(
            "No more than sound small blocks have. Large ones have far less, so give their capacity"
                + " before you call it good."));
    says("A motor that takes 20 A pulls the voltage down by {fall}.");
  }

  private static double usual(Values v) {
    double temperature = v.of("battery-temperature");
    if (!v.has("capacity")) {
      return PairOfBatteries.resistance(temperature);
    }
    return v.chose("across", "pair")
        ? PairOfBatteries.resistance(temperature, v.of("capacity"))
        : PairOfBatteries.blockResistance(temperature, v.of("capacity"));
  }
}
