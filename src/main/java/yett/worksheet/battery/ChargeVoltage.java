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
 * Float and boost voltage at a temperature: n (V25 - k (T - 25)), with T limited to 5 to 40 degC.
 * Source: {@link LeadAcid#compensated}, {@link PairOfBatteries#charging}.
 */
final class ChargeVoltage extends Worksheet {
  ChargeVoltage() {
    super(Subject.BATTERY, "charge-voltage", "float and boost voltage at a temperature");
    asks(
        reading("battery-temperature", Unit.CELSIUS, "temperature of the battery")
            .possible(-40, 70)
            .good(5, 40),
        choice(
                "stage",
                "what the charger is doing while it is read",
                new Choice("charge", "charging, the batteries still take a current"),
                new Choice("float", "floating, the batteries are full"))
            .mayBeLeftOut(),
        whole("cells", "cells in series; 6 for a 12 V block, 12 for a 24 V pair")
            .usually("12")
            .possible(1, 60),
        reading("float", Unit.VOLT, "float voltage a cell at 25 degC")
            .usually("2.25 V")
            .possible(2.1, 2.4),
        reading("float-fall", Unit.MILLIVOLT, "its fall a cell and degree")
            .usually("3 mV")
            .possible(0, 10),
        reading("boost", Unit.VOLT, "boost voltage a cell at 25 degC")
            .usually("2.35 V")
            .possible(2.2, 2.6),
        reading("boost-fall", Unit.MILLIVOLT, "its fall a cell and degree")
            .usually("5 mV")
            .possible(0, 10),
        reading("measured", Unit.VOLT, "what is read at the batteries while charging")
            .mayBeLeftOut()
            .possible(0, 150));
    tells(
        number("float-voltage", Unit.VOLT, "float voltage")
            .by(
                v ->
                    LeadAcid.compensated(
                        v.whole("cells"),
                        v.of("float"),
                        v.in("float-fall", Unit.VOLT),
                        v.of("battery-temperature"))),
        number("boost-voltage", Unit.VOLT, "boost voltage")
            .by(
                v ->
                    LeadAcid.compensated(
                        v.whole("cells"),
                        v.of("boost"),
                        v.in("boost-fall", Unit.VOLT),
                        v.of("battery-temperature"))),
        number("over-float", Unit.VOLT, "measured over float")
            .by(v -> v.of("measured") - v.of("float-voltage"))
            .given("measured"));
    works(
        step("least", Unit.VOLT)
            .by(v -> ofPair(v, PairOfBatteries.charging(v.of("battery-temperature")).low())),
        step("most", Unit.VOLT)
            .by(v -> ofPair(v, PairOfBatteries.charging(v.of("battery-temperature")).high())),
        step("full", Unit.VOLT)
            .by(v -> ofPair(v, PairOfBatteries.floating(v.of("battery-temperature")).high())));
    formula(
        "n (V25 - k (T - 25)); n cells, V25 voltage a cell at 25 degC, k fall a cell and degree, T"
            + " held within 5 to 40 degC; colder is higher");
    validity(
        "Lead-acid. Chargers without compensation stay at one voltage, which is too little in the"
            + " cold and too much in the heat.");
    source(
        "operation manual of a valve-regulated battery (2.25 V, 3 mV; 2.35 V, 5 mV; constant below"
            + " 5 and above 40 degC); other data sheets float at up to 2.32 V and charge cycles at"
            + " up to 2.50 V; a fiftieth of the capacity as the end of charging is common"
            + " practice");
    lastWord(Battery.DATA_SHEET);
    notes(Battery.SHORT_CIRCUIT);
    says(
        "At this temperature expect {least} to {most} at the batteries, from float with the"
            + " charger's own error to absorption.");
    says(
        when(v -> !v.has("measured")),
        when(
            v -> v.of("measured") < v.of("least"),
            "{measured typed} does not charge: the charger is off or weak, or the batteries are"
                + " still taking all it has; read again after some hours."),
        when(v -> v.of("measured") > v.of("most"), "{measured typed} overcharges.")
            .warning(
                Note.warning(
                    "Overcharged batteries gas and heat. Explosion, acid. Switch the charger off,"
                        + " air the cabinet, and do not touch swollen blocks.")),
        when(v -> v.of("measured") <= v.of("full"), "{measured typed} is as it ought to be."),
        when(
            v -> !v.has("stage"),
            "{measured typed} is right while they still charge, and too much for a float, which has"
                + " {full} at most: is the current into them below a fiftieth of their capacity?"
                + " Then it floats; say stage=float or stage=charge."),
        when(
            v -> v.chose("stage", "float"),
            "{measured typed} is too much for a float, which has {full} at most at this"
                + " temperature: full batteries dry out. Look at the charger's setting, and whether"
                + " it allows for the temperature."),
        otherwise("{measured typed} is as it ought to be while they still charge."));
  }

  /** The voltage (V) of this number of cells, given that of a pair. */
  private static double ofPair(Values v, double pair) {
    return pair * v.of("cells") / PairOfBatteries.CELLS;
  }
}
