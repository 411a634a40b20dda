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
  /** V by which half the cold-cranking current pulls any block down: considered judgement. */
  private static final double LEAST_FALL = 0.5;

  /** What the test came to; what it means is said of each. */
  private enum Verdict {
    PASSES("passes"),
    FAILS("fails"),
    FLAT("none: charge it first"),
    NO_LOAD("none: it was not loaded"),
    TOO_SMALL("none: the load was too small"),
    TOO_LARGE("none: the load was too large");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }
  }

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
        + " battery-council practice; a fall of 0.5 V at least under so much load is a considered"
        + " judgement";
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
        .with("verdict", verdict(entries, margin).words);
  }

  private static Verdict verdict(Entries entries, double margin) {
    double loaded = entries.in("loaded-voltage", Unit.VOLT);
    boolean rested = entries.has("rest-voltage");
    double rest = rested ? entries.in("rest-voltage", Unit.VOLT) : LeadAcid.LOAD_TEST_REST;
    if (rest < LeadAcid.LOAD_TEST_REST) {
      return Verdict.FLAT;
    }
    if (loaded >= (rested ? rest - LEAST_FALL : rest)) {
      return Verdict.NO_LOAD;
    }
    if (entries.has("load")) {
      double share =
          entries.in("load", Unit.AMPERE) / (entries.in("cranking-current", Unit.AMPERE) / 2);
      // A smaller load that fails, and a larger one that passes, tell all the same.
      if (share < 0.9 && margin >= 0) {
        return Verdict.TOO_SMALL;
      }
      if (share > 1.1 && margin < 0) {
        return Verdict.TOO_LARGE;
      }
    }
    return margin < 0 ? Verdict.FAILS : Verdict.PASSES;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double margin = results.in("margin", Unit.VOLT);
    double u = results.uncertainty("margin", Unit.VOLT);
    Verdict verdict = verdict(entries, margin);
    boolean judged = verdict == Verdict.FAILS || verdict == Verdict.PASSES;
    if (judged && u > 0 && Math.abs(margin) < 2 * u) {
      return Meaning.of(
          "The margin of "
              + tell(margin, Unit.VOLT)
              + " is within what the readings leave open; test again, or call it worn if it is"
              + " old.");
    }
    String right = tell(results.in("right-load", Unit.AMPERE), Unit.AMPERE);
    return Meaning.of(
        switch (verdict) {
          case FLAT ->
              "A block that is not charged fails whatever its health; charge it and test again.";
          case NO_LOAD ->
              tell(entries.in("loaded-voltage", Unit.VOLT), Unit.VOLT)
                  + " is what a block has without a load: no current of "
                  + right
                  + " was flowing. Look at tester and clamps, and test again.";
          case TOO_SMALL ->
              "It held under less than the "
                  + right
                  + " of this test, which says nothing; test again with the right load.";
          case TOO_LARGE ->
              "It sank under more than the "
                  + right
                  + " of this test, as a sound one may; test again with the right load.";
          case FAILS ->
              "It sinks "
                  + tell(-margin, Unit.VOLT)
                  + " too low at this temperature: worn, replace the pair if it was charged and"
                  + " loaded as it ought to be.";
          case PASSES ->
              "It holds with " + tell(margin, Unit.VOLT) + " to spare at this temperature.";
        });
  }
}
