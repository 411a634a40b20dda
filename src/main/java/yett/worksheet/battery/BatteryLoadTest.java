package yett.worksheet.battery;

import yett.calculation.LeadAcid;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Verdict on a load test: half the cold-cranking current for 15 s, lowest voltage by temperature.
 * Source: {@link LeadAcid#loadTestMinimum}.
 */
final class BatteryLoadTest extends Worksheet {
  /**
   * Smallest voltage drop (V) of any block at half its cold-cranking current: considered judgement.
   */
  private static final double LEAST_FALL = 0.5;

  /** The result of the test; sentences say what it means. */
  private enum Result {
    PASSES("passes"),
    FAILS("fails"),
    FLAT("none: charge it first"),
    NO_LOAD("none: it was not loaded"),
    TOO_SMALL("none: the load was too small"),
    TOO_LARGE("none: the load was too large");

    private final String words;

    Result(String words) {
      this.words = words;
    }
  }

  BatteryLoadTest() {
    super(Subject.BATTERY, "battery-load-test", "verdict on a load test of a 12 V block");
    asks(
        reading("cranking-current", Unit.AMPERE, "cold-cranking current on its label (CCA)")
            .possible(20, 2000),
        reading("loaded-voltage", Unit.VOLT, "voltage at the end of 15 s under load")
            .possible(0, 14),
        reading("battery-temperature", Unit.CELSIUS, "temperature of the battery")
            .usually("20 degC")
            .possible(-18, 60),
        reading("load", Unit.AMPERE, "current it was loaded with; half the CCA if left out")
            .mayBeLeftOut()
            .possible(1, 1000),
        reading("rest-voltage", Unit.VOLT, "voltage at rest before the test")
            .mayBeLeftOut()
            .possible(1, 14));
    tells(
        number("right-load", Unit.AMPERE, "load for this test")
            .by(v -> v.of("cranking-current") / 2),
        number("lowest", Unit.VOLT, "lowest voltage allowed")
            .by(v -> LeadAcid.loadTestMinimum(v.of("battery-temperature"))),
        number("margin", Unit.VOLT, "margin").by(v -> v.of("loaded-voltage") - v.of("lowest")),
        text("verdict", "verdict").by(v -> verdict(v).words));
    works(step("missing", Unit.VOLT).by(v -> -v.of("margin")));
    formula(
        "load CCA/2 for 15 s; lowest voltage 9.6 V at 20 degC and up, 9.5 at 16, 9.4 at 10, 9.3 at"
            + " 4, 9.1 at -1, 8.9 at -7, 8.7 at -12, 8.5 at -18 degC, straight lines between");
    validity(
        "Blocks with a cold-cranking rating, charged to 12.4 V or more at rest, each block by"
            + " itself. Small standby blocks have no such rating: test their capacity"
            + " (battery-capacity) or watch their resistance (battery-resistance).");
    source(
        "load test and table of vehicle service information; 12.4 V at rest from memory of"
            + " battery-council practice; a fall of 0.5 V at least under so much load is a"
            + " considered judgement");
    lastWord(Battery.DATA_SHEET);
    notes(
        Battery.SHORT_CIRCUIT,
        Note.warning(
            "A load tester sparks when it is clamped on, and hydrogen may have collected over"
                + " the block. An explosion throws acid. Air the cabinet, clamp on with the load"
                + " off, never load a swollen, leaking or frozen block."));
    says(
        when(
            v -> verdict(v) == Result.FLAT,
            "A block that is not charged fails whatever its health; charge it and test again."),
        when(
            v -> verdict(v) == Result.NO_LOAD,
            "{loaded-voltage} is what a block has without a load: no current of {right-load} was"
                + " flowing. Look at tester and clamps, and test again."),
        when(
            v -> verdict(v) == Result.TOO_SMALL,
            "It held under less than the {right-load} of this test, which says nothing; test again"
                + " with the right load."),
        when(
            v -> verdict(v) == Result.TOO_LARGE,
            "It sank under more than the {right-load} of this test, as a sound one may; test again"
                + " with the right load."),
        when(
            v -> v.isNear("margin", 0),
            "The margin of {margin} is smaller than the uncertainty of the readings; test"
                + " again, or call it worn if it is old."),
        when(
            v -> verdict(v) == Result.FAILS,
            "It sinks {missing} too low at this temperature: worn, replace the pair if it was"
                + " properly charged and loaded."),
        otherwise("It holds with {margin} to spare at this temperature."));
  }

  private static Result verdict(Values v) {
    boolean rested = v.has("rest-voltage");
    double rest = rested ? v.of("rest-voltage") : LeadAcid.LOAD_TEST_REST;
    if (rest < LeadAcid.LOAD_TEST_REST) {
      return Result.FLAT;
    }
    if (v.of("loaded-voltage") >= (rested ? rest - LEAST_FALL : rest)) {
      return Result.NO_LOAD;
    }
    boolean failed = v.of("margin") < 0;
    double share = v.has("load") ? v.of("load") / v.of("right-load") : 1;
    // A failure at a smaller load, or a pass at a larger one, is valid all the same.
    if (share < 0.9 && !failed) {
      return Result.TOO_SMALL;
    }
    if (share > 1.1 && failed) {
      return Result.TOO_LARGE;
    }
    return failed ? Result.FAILS : Result.PASSES;
  }
}
