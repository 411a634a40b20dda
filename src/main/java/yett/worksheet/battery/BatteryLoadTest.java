package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.LeadAcid;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Verdict on a load test: half the cold-cranking current for 15 s, lowest voltage by temperature.
 * Source: {@link LeadAcid#loadTestMinimum}.
 */
final class BatteryLoadTest extends Worksheet {
  BatteryLoadTest() {
    super(Subject.BATTERY, "battery-load-test", "verdict on a load test of a 12 V block");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("cranking-current", Unit.AMPERE, "cold-cranking current on its label (CCA)")
            .possible(20, 2000),
        Input.reading("loaded-voltage", Unit.VOLT, "voltage at the end of 15 s under load")
            .possible(0, 14),
        Input.reading("battery-temperature", Unit.CELSIUS, "temperature of the battery")
            .usually("20 degC")
            .possible(-18, 60),
        Input.reading("load", Unit.AMPERE, "current it was loaded with; half the CCA if left out")
            .mayBeLeftOut()
            .possible(1, 1000),
        Input.reading("rest-voltage", Unit.VOLT, "voltage at rest before the test")
            .mayBeLeftOut()
            .possible(1, 14));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("right-load", Unit.AMPERE, "load for this test"),
        Output.reading("lowest", Unit.VOLT, "lowest voltage allowed"),
        Output.reading("margin", Unit.VOLT, "margin"),
        Output.text("verdict", "verdict"));
  }

  @Override
  public String formula() {
    return "load CCA/2 for 15 s; lowest voltage 9.6 V at 20 degC and up, 9.5 at 16, 9.4 at 10, 9.3"
        + " at 4, 9.1 at -1, 8.9 at -7, 8.7 at -12, 8.5 at -18 degC, straight lines between";
  }

  @Override
  public String validity() {
    return "Blocks with a cold-cranking rating, charged to 12.4 V or more at rest, each block by"
        + " itself. Small standby blocks have no such rating: test their capacity"
        + " (battery-capacity) or watch their resistance (battery-resistance).";
  }

  @Override
  public String source() {
    return "load test and table of vehicle service information; 12.4 V at rest from memory of"
        + " battery-council practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Battery.DATA_SHEET);
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Battery.SHORT_CIRCUIT,
        Note.warning(
            "A load tester sparks when it is clamped on, and hydrogen may stand over the block. An"
                + " explosion throws acid. Air the cabinet, clamp on with the load off, never load"
                + " a swollen, leaking or frozen block."));
  }

  @Override
  protected Results work(Entries entries) {
    double lowest = LeadAcid.loadTestMinimum(entries.in("battery-temperature", Unit.CELSIUS));
    double margin = entries.in("loaded-voltage", Unit.VOLT) - lowest;
    return new Results()
        .with("right-load", entries.in("cranking-current", Unit.AMPERE) / 2, Unit.AMPERE)
        .with("lowest", lowest, Unit.VOLT)
        .with("margin", margin, Unit.VOLT)
        .with("verdict", verdict(entries, margin));
  }

  private static String verdict(Entries entries, double margin) {
    if (entries.has("rest-voltage") && entries.in("rest-voltage", Unit.VOLT) < 12.4) {
      return "none: charge it first";
    }
    if (entries.has("load")) {
      double share =
          entries.in("load", Unit.AMPERE) / (entries.in("cranking-current", Unit.AMPERE) / 2);
      // A smaller load that fails, and a larger one that passes, tell all the same.
      if (share < 0.9 && margin >= 0) {
        return "none: the load was too small";
      }
      if (share > 1.1 && margin < 0) {
        return "none: the load was too large";
      }
    }
    return margin < 0 ? "fails" : "passes";
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double margin = results.in("margin", Unit.VOLT);
    double u = results.uncertainty("margin", Unit.VOLT);
    if (entries.has("rest-voltage") && entries.in("rest-voltage", Unit.VOLT) < 12.4) {
      return Meaning.of(
          "A block that is not charged fails whatever its health; charge it and test again.");
    }
    if (u > 0 && Math.abs(margin) < 2 * u) {
      return Meaning.of(
          "The margin of "
              + tell(margin, Unit.VOLT)
              + " is within what the readings leave open; test again, or call it worn if it is"
              + " old.");
    }
    return Meaning.of(
        margin < 0
            ? "It sinks "
                + tell(-margin, Unit.VOLT)
                + " too low at this temperature: worn, replace the pair if it was charged and"
                + " loaded as it ought to be."
            : "It holds with " + tell(margin, Unit.VOLT) + " to spare at this temperature.");
  }
}
