package yett.worksheet.battery;

import java.util.OptionalDouble;
import yett.calculation.BatteryCapacity;
import yett.calculation.LeadAcid;
import yett.calculation.LeadAcid.Build;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Note;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * State of charge from the rest voltage: straight lines between the rows of a published chart, with
 * the voltage corrected to 25 degC by 0.2 mV a cell and degree. Source: {@link LeadAcid}.
 */
final class BatteryCharge extends Worksheet {
  /** Change of the rest voltage of a block (V/degC); textbook, from memory. */
  private static final double PER_DEGREE = 6 * 0.0002;

  /** Time (h) after which the last charge no longer shows. */
  private static final double RESTED = 8;

  private static final String FLAT =
      "At {block-voltage} a block it is flat, below what the chart covers.";

  BatteryCharge() {
    super(Subject.BATTERY, "battery-charge", "state of charge from the voltage at rest");
    asks(
        reading("rest-voltage", Unit.VOLT, "voltage after rest, without charge or load")
            .possible(1, 32),
        choice(
                "across",
                "what it was read across",
                new Choice("block", "one 12 V block"),
                new Choice("pair", "the 24 V pair"))
            .usually("block"),
        choice(
                "kind",
                "kind of battery",
                new Choice("agm", "sealed, glass mat (AGM)"),
                new Choice("flooded", "flooded, with caps"))
            .usually("agm"),
        Battery.temperature(),
        reading("rest", Unit.HOUR, "how long it has rested")
            .usually("8 h")
            .possible(0, 10000)
            .good(RESTED, 1000));
    refuses(
        v -> v.of("block-voltage") > 16,
        "More than 16 V a block is not a rest voltage; maybe across=pair, or it is being"
            + " charged.");
    tells(
        number("block-voltage", Unit.VOLT, "a block, at 25 degC")
            .by(
                v ->
                    v.of("rest-voltage") / (v.chose("across", "pair") ? 2 : 1)
                        - PER_DEGREE * (v.of("battery-temperature") - 25)),
        number("charge", Unit.PERCENT, "charge by the chart")
            .by(v -> 100 * charge(v).getAsDouble())
            .when(v -> rests(v) && charge(v).isPresent()),
        text("between", "certainly between")
            .by(v -> between(LeadAcid.chargeBand(build(v), v.of("block-voltage"))))
            .when(BatteryCharge::rests),
        number("usable", Unit.PERCENT, "usable in this cold")
            .by(
                v ->
                    v.of("charge")
                        * Math.min(1, BatteryCapacity.atTemperature(Battery.held(v), 20)))
            .given("charge"));
    works(
        step("highest", Unit.VOLT)
            .by(
                v ->
                    build(v).highestAtRest()
                        + (v.of("rest") >= RESTED ? 0 : LeadAcid.SURFACE_CHARGE)));
    formula(
        "V25 = V - 6 x 0.2 mV (T - 25); charge on straight lines between 12.0 V 25 %, 12.3 V 50 %,"
            + " 12.6 V 75 %, 12.8 V 100 % (AGM) or 11.89, 12.06, 12.24, 12.45, 12.65 V for 0 to 100"
            + " % (flooded); usable = charge x capacity at T");
    validity(
        "Up to 13.2 V (AGM) or 12.75 V (flooded) a block, 0.4 V more within 8 h of a"
            + " charge: more is no rest. After 8 h, better 24 h, without charge and load."
            + " Public charts differ by up to 0.3 V, so the result is good to about a quarter"
            + " of the charge; a worn battery may show full and hold little.");
    source(
        "AGM chart of a vehicle manual; flooded chart and temperature coefficient from memory;"
            + " capacity by temperature from battery data sheets");
    lastWord(Battery.DATA_SHEET);
    notes(Battery.SHORT_CIRCUIT);
    says(
        when(
            v -> !rests(v),
            "{block-voltage} a block is not a rest voltage: a full one has {highest} at most;"
                + " it is being charged, or the last charge is still on its plates.",
            "Switch the charger off, let the gate run once, wait 8 h, and read again."),
        when(
            v -> !v.has("charge") && v.of("block-voltage") < 10.7,
            FLAT,
            "A whole cell may be dead (about 2 V less): read the blocks one by one."),
        when(
            v -> !v.has("charge"),
            FLAT,
            "Charge it today: a battery left flat sulphates and does not come back."),
        when(
            v -> v.of("charge") >= 75,
            "Charged well enough to judge it: a load test now shows whether it also holds"
                + " under load."),
        otherwise(
            "Only about {charge} is left: charge it before you judge anything else, and check"
                + " the charger."));
    says(
        when(BatteryCharge::mayFreeze)
            .warning(
                Note.danger(
                    "A flat battery freezes. Charging a frozen one can burst it. Warm it through"
                        + " first; a bulged case goes to the recycler.")));
  }

  private static Build build(Values v) {
    return v.choice("kind", Build.class);
  }

  private static boolean rests(Values v) {
    return v.of("block-voltage") <= v.of("highest");
  }

  private static OptionalDouble charge(Values v) {
    return LeadAcid.charge(build(v), v.of("block-voltage"));
  }

  private static boolean mayFreeze(Values v) {
    return rests(v) && v.of("battery-temperature") < 0 && (!v.has("charge") || v.of("charge") < 40);
  }

  private static String between(Range band) {
    return band.low() == band.high()
        ? percent(band.low()) + ", or it still carries surface charge"
        : percent(band.low()) + " and " + percent(band.high());
  }

  private static String percent(double fraction) {
    return NumberWords.told(100 * fraction, Unit.PERCENT);
  }
}
