package yett.worksheet.feeder;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Conductor;
import yett.calculation.MainsLoad;
import yett.quantity.Unit;
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
 * Mains voltage at the operator while it runs: V - 2 I L R', where the mains current I = (24 V Im +
 * Pc)/(η V) follows from the motor current Im. Source: {@link MainsLoad}, {@code Conductor}.
 */
final class FeederVoltage extends Worksheet {
  FeederVoltage() {
    super(Subject.FEEDER, "feeder-voltage", "mains at the operator while the motor runs");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("supply", Unit.VOLT, "mains where the feeder begins, or at standstill")
            .possible(80, 500),
        Input.reading("motor-current", Unit.AMPERE, "current of the 24 V motor while it runs")
            .possible(0, 60),
        Wire.length(),
        Wire.size(),
        Wire.strands(),
        Wire.temperature(),
        Input.reading("charging", Unit.WATT, "power that charging takes meanwhile")
            .usually("120 W")
            .possible(0, 1000),
        Input.reading("efficiency", Unit.PERCENT, "efficiency of the supply, power factor included")
            .usually("75 %")
            .possible(10, 100)
            .good(50, 95),
        Input.reading("measured", Unit.VOLT, "mains read at the operator under that load")
            .mayBeLeftOut()
            .possible(0, 500));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("mains-current", Unit.AMPERE, "current in the feeder"),
        Output.reading("drop", Unit.VOLT, "voltage lost in the wire"),
        Output.reading("share", Unit.PERCENT, "share of the supply"),
        Output.reading("terminals", Unit.VOLT, "voltage at the operator"),
        Output.reading("unexplained", Unit.VOLT, "lost beyond the wire"),
        Output.reading("joints", Unit.OHM, "resistance of joints"));
  }

  @Override
  public String formula() {
    return "V - 2 I L R', I = (24 V Im + Pc)/(e V); Im motor current, Pc charging power, e"
        + " efficiency, L length one way, R' resistance per length";
  }

  @Override
  public String validity() {
    return "One phase; wire only. The efficiency is a considered judgement: a clamp meter around one"
        + " conductor of the feeder tells the current better (feeder-drop takes it).";
  }

  @Override
  public String source() {
    return Wire.SOURCE
        + "; fuse by "
        + Wire.FLOOR
        + "; power balance of the supply, with 120 W and 75 % from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Wire.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.danger(
            "The mains terminals are live while this is read. Shock or arc can kill. Only an"
                + " electrician reads there, with the leaf clear of people."));
  }

  @Override
  protected Results work(Entries entries) {
    double supply = entries.in("supply", Unit.VOLT);
    double current =
        MainsLoad.current(
            entries.in("motor-current", Unit.AMPERE),
            entries.in("charging", Unit.WATT),
            entries.fraction("efficiency"),
            supply);
    double drop =
        Wire.chosen(entries)
            .drop(
                current,
                entries.in("length", Unit.METRE),
                entries.in("wire-temperature", Unit.CELSIUS));
    if (drop >= supply) {
      throw new InputException(
          "The wire would lose more than the whole voltage; look at length and size.");
    }
    Results results =
        new Results()
            .with("mains-current", current, Unit.AMPERE)
            .with("drop", drop, Unit.VOLT)
            .with("share", 100 * drop / supply, Unit.PERCENT)
            .with("terminals", supply - drop, Unit.VOLT);
    if (entries.has("measured")) {
      double unexplained = supply - drop - entries.in("measured", Unit.VOLT);
      results.with("unexplained", unexplained, Unit.VOLT);
      if (unexplained > 0 && current > 0) {
        results.with("joints", unexplained / current, Unit.OHM);
      }
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double share = results.in("share", Unit.PERCENT) / 100;
    Meaning meaning =
        Meaning.of(
            share > Conductor.ADVISED_DROP
                ? "The feeder itself loses "
                    + percent(share)
                    + ", more than the advised 3 %: the operator is starved whenever it works."
                : "The feeder loses little: " + percent(share) + " while it works.");
    meaning =
        Wire.thickEnough(
            Wire.chosen(entries),
            entries.in("supply", Unit.VOLT),
            results.in("mains-current", Unit.AMPERE),
            meaning);
    if (!entries.has("measured")) {
      return meaning;
    }
    double unexplained = results.in("unexplained", Unit.VOLT);
    double supply = entries.in("supply", Unit.VOLT);
    return meaning.and(
        unexplained > 0.01 * supply
            ? tell(unexplained, Unit.VOLT)
                + " more is lost than wire explains: look for a hot or corroded joint, or a weak"
                + " service that sags before the feeder."
            : "The reading fits the wire; there is no sign of a bad joint.");
  }
}
