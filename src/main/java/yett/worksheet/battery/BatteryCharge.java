package yett.worksheet.battery;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.calculation.BatteryCapacity;
import yett.calculation.LeadAcid;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * State of charge from the rest voltage: straight lines between the rows of a published chart, the
 * voltage brought to 25 degC by 0.2 mV a cell and degree. Source: {@link LeadAcid}.
 */
final class BatteryCharge extends Worksheet {
  /** V for each block and degC; textbook, from memory. */
  private static final double PER_DEGREE = 6 * 0.0002;

  /** h after which the last charge no longer shows. */
  private static final double RESTED = 8;

  BatteryCharge() {
    super(Subject.BATTERY, "battery-charge", "state of charge from the voltage at rest");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("rest-voltage", Unit.VOLT, "voltage after rest, without charge or load")
            .possible(1, 32),
        Input.choice(
                "across",
                "what it was read across",
                new Choice("block", "one 12 V block"),
                new Choice("pair", "the 24 V pair"))
            .usually("block"),
        Input.choice(
                "kind",
                "kind of battery",
                new Choice("agm", "sealed, glass mat (AGM)"),
                new Choice("flooded", "flooded, with caps"))
            .usually("agm"),
        Battery.temperature(),
        Input.reading("rest", Unit.HOUR, "how long it has rested")
            .usually("8 h")
            .possible(0, 10000)
            .good(RESTED, 1000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("block-voltage", Unit.VOLT, "a block, at 25 degC"),
        Output.reading("charge", Unit.PERCENT, "charge by the chart"),
        Output.text("between", "surely between"),
        Output.reading("usable", Unit.PERCENT, "usable in this cold"));
  }

  @Override
  public String formula() {
    return "V25 = V - 6 x 0.2 mV (T - 25); charge on straight lines between 12.0 V 25 %, 12.3 V 50"
        + " %, 12.6 V 75 %, 12.8 V 100 % (AGM) or 11.89, 12.06, 12.24, 12.45, 12.65 V for 0"
        + " to 100 % (flooded); usable = charge x capacity at T";
  }

  @Override
  public String validity() {
    return "Up to 13.2 V (AGM) or 12.75 V (flooded) a block, 0.4 V more within 8 h of a charge: more is"
        + " no rest. After 8 h, better 24 h, without charge and load. Public charts differ by up to 0.3 V,"
        + " so a quarter of the charge is as fine as it gets; a worn battery may show full"
        + " and hold little.";
  }

  @Override
  public String source() {
    return "AGM chart of a vehicle manual; flooded chart and temperature coefficient from memory;"
        + " capacity by temperature from battery data sheets";
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
    int blocks = entries.choice("across").id().equals("pair") ? 2 : 1;
    double volts =
        entries.in("rest-voltage", Unit.VOLT) / blocks
            - PER_DEGREE * (entries.in("battery-temperature", Unit.CELSIUS) - 25);
    if (volts > 16) {
      throw new InputException(
          "More than 16 V a block is no rest voltage; maybe across=pair, or it is being charged.");
    }
    LeadAcid.Build build = build(entries);
    Results results = new Results().with("block-voltage", volts, Unit.VOLT);
    if (volts > highest(entries)) {
      return results;
    }
    results.with("between", between(LeadAcid.chargeBand(build, volts)));
    OptionalDouble charge = LeadAcid.charge(build, volts);
    if (charge.isPresent()) {
      double cold = BatteryCapacity.atTemperature(Battery.held(entries), 20);
      results
          .with("charge", 100 * charge.getAsDouble(), Unit.PERCENT)
          .with("usable", 100 * charge.getAsDouble() * Math.min(1, cold), Unit.PERCENT);
    }
    return results;
  }

  private static LeadAcid.Build build(Entries entries) {
    return entries.choice("kind").id().equals("agm") ? LeadAcid.Build.AGM : LeadAcid.Build.FLOODED;
  }

  /** V a block above which it does not rest, after the time that it was given for it. */
  private static double highest(Entries entries) {
    boolean rested = entries.in("rest", Unit.HOUR) >= RESTED;
    return build(entries).highestAtRest() + (rested ? 0 : LeadAcid.SURFACE_CHARGE);
  }

  private static String between(Range band) {
    return band.low() == band.high()
        ? percent(band.low()) + ", or it still carries surface charge"
        : percent(band.low()) + " and " + percent(band.high());
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double volts = results.in("block-voltage", Unit.VOLT);
    if (!results.has("between")) {
      return Meaning.of(
          tell(volts, Unit.VOLT)
              + " a block is no voltage at rest, a full one has "
              + tell(highest(entries), Unit.VOLT)
              + " at most: it is being charged, or the last charge is still on its plates.",
          "Switch the charger off, let the gate run once, wait "
              + tell(RESTED, Unit.HOUR)
              + ", and read again.");
    }
    Meaning meaning;
    if (!results.has("charge")) {
      meaning =
          Meaning.of(
              "At " + tell(volts, Unit.VOLT) + " a block it is flat, below what the chart covers.",
              volts < 10.7
                  ? "A whole cell may be dead (about 2 V less): read the blocks one by one."
                  : "Charge it today: a battery left flat sulphates and does not come back.");
    } else {
      double charge = results.in("charge", Unit.PERCENT) / 100;
      meaning =
          charge >= 0.75
              ? Meaning.of(
                  "Charged well enough to judge it: a load test now tells whether it also holds.")
              : Meaning.of(
                  "Only about "
                      + percent(charge)
                      + " is left: charge it before any other judgement, and look at the charger.");
    }
    boolean mayFreeze =
        entries.in("battery-temperature", Unit.CELSIUS) < 0
            && (!results.has("charge") || results.in("charge", Unit.PERCENT) < 40);
    return mayFreeze
        ? meaning.with(
            Note.danger(
                "A flat battery freezes. Charging a frozen one can burst it. Warm it through first;"
                    + " a bulged case goes to the recycler."))
        : meaning;
  }
}
