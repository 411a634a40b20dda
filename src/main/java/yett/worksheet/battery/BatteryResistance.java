package yett.worksheet.battery;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.calculation.LeadAcid;
import yett.calculation.PairOfBatteries;
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
 * Internal resistance from two steady loads: Ri = (V1 - V2)/(I2 - I1). Source: {@link LeadAcid},
 * {@link PairOfBatteries}.
 */
final class BatteryResistance extends Worksheet {
  BatteryResistance() {
    super(Subject.BATTERY, "battery-resistance", "internal resistance from a loaded reading");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("voltage", Unit.VOLT, "voltage at the posts with little or no load")
            .possible(1, 32),
        Input.reading("current", Unit.AMPERE, "current then").usually("0 A").possible(-5, 100),
        Input.reading("loaded-voltage", Unit.VOLT, "voltage 5 to 15 s after the load came on")
            .possible(0, 32),
        Input.reading("loaded-current", Unit.AMPERE, "current then, the larger one")
            .possible(0.1, 1000),
        Input.choice(
                "across",
                "what it was read across",
                new Choice("pair", "the 24 V pair with its cables"),
                new Choice("block", "one 12 V block"))
            .usually("pair"),
        Battery.temperature(),
        Battery.capacity().mayBeLeftOut(),
        Input.reading("baseline", Unit.MILLIOHM, "the same reading when it was new")
            .mayBeLeftOut()
            .possible(0.5, 1000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("resistance", Unit.MILLIOHM, "internal resistance"),
        Output.reading("usual", Unit.MILLIOHM, "usual for it, at most"),
        Output.reading("rise", Unit.PERCENT, "over the baseline"),
        Output.reading("fall", Unit.VOLT, "fall at 20 A"),
        Output.reading("short-circuit", Unit.AMPERE, "short-circuit current"));
  }

  @Override
  public String formula() {
    return "Ri = (V1 - V2)/(I2 - I1); usual for a block at most 320 mohm/C, 25 mohm for small ones, for"
        + " a pair twice that and 10 mohm of cables; C capacity in Ah, 1 % more for each degree below"
        + " 15 degC; sound up to 1.2 times the usual; short circuit V/Ri, V1 + Ri I1 without load";
  }

  @Override
  public String validity() {
    return "Direct current, both readings at the same posts, steady and at one state of charge,"
        + " some volts or amperes apart. Readings of one meter share most of their error,"
        + " which makes the true uncertainty smaller than the one shown. Meters that send a"
        + " test signal give other values: compare like with like.";
  }

  @Override
  public String source() {
    return "textbook circuit, a method of the kind of IEC 60896-21; 20 % over the own baseline"
        + " calls for action after IEEE 1188 as paraphrased; under 8 mohm for a block of"
        + " 40 Ah from a data sheet, other capacities in proportion by considered judgement; 60 mohm"
        + " for a pair of small blocks with cables from memory";
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
            "The gate moves while it is the load. Crushing. Keep the opening clear and one hand at"
                + " the stop."));
  }

  @Override
  protected Results work(Entries entries) {
    double v1 = entries.in("voltage", Unit.VOLT);
    double v2 = entries.in("loaded-voltage", Unit.VOLT);
    double i1 = entries.in("current", Unit.AMPERE);
    double i2 = entries.in("loaded-current", Unit.AMPERE);
    if (i2 <= i1 || v2 >= v1) {
      throw new InputException(
          "Under the larger current the voltage must be the lower one; maybe the two readings are"
              + " swapped, or the charger was still on.");
    }
    double resistance = LeadAcid.internalResistance(v1, i1, v2, i2);
    Results results =
        new Results()
            .with("resistance", resistance, Unit.OHM)
            .with("fall", 20 * resistance, Unit.VOLT)
            .with("short-circuit", (v1 + resistance * i1) / resistance, Unit.AMPERE);
    usual(entries).ifPresent(usual -> results.with("usual", usual, Unit.OHM));
    if (entries.has("baseline")) {
      results.with("rise", 100 * (resistance / entries.in("baseline", Unit.OHM) - 1), Unit.PERCENT);
    }
    return results;
  }

  /** Ohm; empty for a block of which nobody knows how large it is. */
  private static OptionalDouble usual(Entries entries) {
    double temperature = entries.in("battery-temperature", Unit.CELSIUS);
    boolean pair = entries.choice("across").id().equals("pair");
    if (!entries.has("capacity")) {
      return pair
          ? OptionalDouble.of(PairOfBatteries.resistance(temperature))
          : OptionalDouble.empty();
    }
    double capacity = entries.in("capacity", Unit.AMPERE_HOUR);
    return OptionalDouble.of(
        pair
            ? PairOfBatteries.resistance(temperature, capacity)
            : PairOfBatteries.blockResistance(temperature, capacity));
  }

  @Override
  protected List<String> remarks(Entries entries, Results results) {
    double step = entries.in("voltage", Unit.VOLT) - entries.in("loaded-voltage", Unit.VOLT);
    return step < 0.2
        ? List.of(
            "A step of "
                + tell(step, Unit.VOLT)
                + " is hardly more than a meter can tell; load the battery harder.")
        : List.of();
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double resistance = results.in("resistance", Unit.OHM);
    String fall =
        "A motor that takes 20 A pulls the voltage down by "
            + tell(results.in("fall", Unit.VOLT), Unit.VOLT)
            + ".";
    if (results.has("rise")) {
      double rise = results.in("rise", Unit.PERCENT) / 100;
      return Meaning.of(
          rise > 0.2
              ? percent(rise)
                  + " over its baseline: it is wearing out or a link has worked loose; clean and"
                  + " tighten, read again, then load test."
              : "Within a fifth of its baseline: no sign of wear.",
          fall);
    }
    if (results.has("usual")) {
      return Meaning.of(judged(entries, resistance, results.in("usual", Unit.OHM)), fall);
    }
    return Meaning.of(
        "Keep it as the baseline of this block; a rise tells more than the value.", fall);
  }

  private static String judged(Entries entries, double resistance, double usual) {
    String of = entries.has("capacity") ? "blocks of " + entries.shown("capacity") : "small blocks";
    if (resistance > PairOfBatteries.SOUND * usual) {
      return "More than sound "
          + of
          + " have: feel for a warm lug and read across each link, then suspect the blocks.";
    }
    if (resistance > usual) {
      return "A little more than is usual for "
          + of
          + ": still sound; read it again at the next visit.";
    }
    return entries.has("capacity")
        ? "As low as it ought to be for " + of + "."
        : "No more than sound small blocks have. Large ones have far less, so give their capacity"
            + " before you call it good.";
  }
}
