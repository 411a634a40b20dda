package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.LeadAcid;
import yett.calculation.PairOfBatteries;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Float and boost voltage at a temperature: n (V25 - k (T - 25)), T held within 5 to 40 degC.
 * Source: {@link LeadAcid#compensated}, {@link PairOfBatteries#charging}.
 */
final class ChargeVoltage extends Worksheet {
  private static final Choice CHARGE =
      new Choice("charge", "charging, the batteries still take a current");
  private static final Choice FLOAT = new Choice("float", "floating, the batteries are full");

  ChargeVoltage() {
    super(Subject.BATTERY, "charge-voltage", "float and boost voltage at a temperature");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("battery-temperature", Unit.CELSIUS, "temperature of the battery")
            .possible(-40, 70)
            .good(5, 40),
        Input.choice("stage", "what the charger is doing while it is read", CHARGE, FLOAT)
            .mayBeLeftOut(),
        Input.whole("cells", "cells in series; 6 for a 12 V block, 12 for a 24 V pair")
            .usually("12")
            .possible(1, 60),
        Input.reading("float", Unit.VOLT, "float voltage a cell at 25 degC")
            .usually("2.25 V")
            .possible(2.1, 2.4),
        Input.reading("float-fall", Unit.MILLIVOLT, "its fall a cell and degree")
            .usually("3 mV")
            .possible(0, 10),
        Input.reading("boost", Unit.VOLT, "boost voltage a cell at 25 degC")
            .usually("2.35 V")
            .possible(2.2, 2.6),
        Input.reading("boost-fall", Unit.MILLIVOLT, "its fall a cell and degree")
            .usually("5 mV")
            .possible(0, 10),
        Input.reading("measured", Unit.VOLT, "what is read at the batteries while charging")
            .mayBeLeftOut()
            .possible(0, 150));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("float-voltage", Unit.VOLT, "float voltage"),
        Output.reading("boost-voltage", Unit.VOLT, "boost voltage"),
        Output.reading("over-float", Unit.VOLT, "measured over float"));
  }

  @Override
  public String formula() {
    return "n (V25 - k (T - 25)); n cells, V25 voltage a cell at 25 degC, k fall a cell and degree,"
        + " T held within 5 to 40 degC; colder is higher";
  }

  @Override
  public String validity() {
    return "Lead-acid. Chargers without compensation stay at one voltage, which is too little in"
        + " the cold and too much in the heat.";
  }

  @Override
  public String source() {
    return "operation manual of a valve-regulated battery (2.25 V, 3 mV; 2.35 V, 5 mV; constant"
        + " below 5 and above 40 degC); other data sheets float at up to 2.32 V and charge"
        + " cycles at up to 2.50 V; a fiftieth of the capacity as the end of charging is common"
        + " practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Battery.DATA_SHEET);
  }

  @Override
  public List<Note> notes() {
    return List.of(Battery.SHORT_CIRCUIT);
  }

  @Override
  protected Results work(Entries entries) {
    int cells = entries.whole("cells");
    double temperature = entries.in("battery-temperature", Unit.CELSIUS);
    double floating =
        LeadAcid.compensated(
            cells,
            entries.in("float", Unit.VOLT),
            entries.in("float-fall", Unit.VOLT),
            temperature);
    double boost =
        LeadAcid.compensated(
            cells,
            entries.in("boost", Unit.VOLT),
            entries.in("boost-fall", Unit.VOLT),
            temperature);
    Results results =
        new Results()
            .with("float-voltage", floating, Unit.VOLT)
            .with("boost-voltage", boost, Unit.VOLT);
    if (entries.has("measured")) {
      results.with("over-float", entries.in("measured", Unit.VOLT) - floating, Unit.VOLT);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double share = entries.whole("cells") / (double) PairOfBatteries.CELLS;
    Range usual = PairOfBatteries.charging(entries.in("battery-temperature", Unit.CELSIUS));
    String expect =
        "At this temperature expect "
            + tell(usual.low() * share, Unit.VOLT)
            + " to "
            + tell(usual.high() * share, Unit.VOLT)
            + " at the batteries, from float with the charger's own error to absorption.";
    if (!entries.has("measured")) {
      return Meaning.of(expect);
    }
    double measured = entries.in("measured", Unit.VOLT);
    String read = entries.shown("measured");
    if (measured < usual.low() * share) {
      return Meaning.of(
          expect,
          read
              + " does not charge: the charger is off or weak, or the batteries are still taking"
              + " all it has; read again after some hours.");
    }
    if (measured > usual.high() * share) {
      return Meaning.of(expect, read + " overcharges.")
          .with(
              Note.warning(
                  "Overcharged batteries gas and heat. Explosion, acid. Switch the charger off, air"
                      + " the cabinet, and do not touch swollen blocks."));
    }
    double full = PairOfBatteries.floating(entries.in("battery-temperature", Unit.CELSIUS)).high();
    if (measured <= full * share) {
      return Meaning.of(expect, read + " is as it ought to be.");
    }
    String most = tell(full * share, Unit.VOLT);
    if (!entries.has("stage")) {
      return Meaning.of(
          expect,
          read
              + " is right while they still charge, and too much for a float, which has "
              + most
              + " at most: is the current into them below a fiftieth of their capacity? Then it"
              + " floats; say stage=float or stage=charge.");
    }
    return entries.choice("stage").equals(FLOAT)
        ? Meaning.of(
            expect,
            read
                + " is too much for a float, which has "
                + most
                + " at most at this temperature: full batteries dry out. Look at the charger's"
                + " setting, and whether it allows for the temperature.")
        : Meaning.of(expect, read + " is as it ought to be while they still charge.");
  }
}
