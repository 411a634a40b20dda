package yett.worksheet.battery;

import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.BatteryCapacity;
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
 * Capacity from a discharge test, brought to 25 degC: C/(1 + k (T - 25)). Source: {@link
 * BatteryCapacity}.
 */
final class CapacityLeft extends Worksheet {
  CapacityLeft() {
    super(Subject.BATTERY, "battery-capacity", "capacity left, from a discharge test");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Battery.capacity(),
        Input.reading("drawn", Unit.AMPERE_HOUR, "charge drawn down to the end voltage")
            .possible(0, 600),
        Input.reading(
                "battery-temperature", Unit.CELSIUS, "temperature of the battery at the start")
            .usually("25 degC")
            .possible(-20, 60)
            .good(5, 40),
        Input.choice(
                "duration",
                "how long the discharge took",
                new Choice("long", "10 to 20 h"),
                new Choice("short", "1 to 3 h"))
            .usually("long"));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("capacity-at-25", Unit.AMPERE_HOUR, "capacity at 25 degC"),
        Output.reading("share", Unit.PERCENT, "of the rated capacity"),
        Output.reading("limit", Unit.AMPERE_HOUR, "replace below"),
        Output.text("verdict", "verdict"));
  }

  @Override
  public String formula() {
    return "C25 = C/(1 + k (T - 25)), k = 0.006 for 10 to 20 h and 0.01 for 1 to 3 h; replace below"
        + " 80 %, test yearly below 90 %";
  }

  @Override
  public String validity() {
    return "A fully charged block, discharged at a constant current to the end voltage of its data"
        + " sheet (about 10.5 V for 20 h), compared with the rating at that time: a short"
        + " discharge gives less by itself (battery-runtime).";
  }

  @Override
  public String source() {
    return "discharge-test practice; 80 % after IEEE 450 and 1188; 90 % from a storage-battery"
        + " maintenance note";
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
    double rated = entries.in("capacity", Unit.AMPERE_HOUR);
    double coefficient = entries.choice("duration").id().equals("long") ? 0.006 : 0.01;
    double capacity =
        BatteryCapacity.at25(
            entries.in("drawn", Unit.AMPERE_HOUR),
            entries.in("battery-temperature", Unit.CELSIUS),
            coefficient);
    double share = capacity / rated;
    String verdict =
        share < BatteryCapacity.WORN
            ? "worn out"
            : share < BatteryCapacity.WATCH ? "test every year" : "good";
    return new Results()
        .with("capacity-at-25", capacity, Unit.AMPERE_HOUR)
        .with("share", 100 * share, Unit.PERCENT)
        .with("limit", BatteryCapacity.WORN * rated, Unit.AMPERE_HOUR)
        .with("verdict", verdict);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double share = results.in("share", Unit.PERCENT) / 100;
    double u = results.uncertainty("share", Unit.PERCENT) / 100;
    String close =
        u > 0 && Math.abs(share - BatteryCapacity.WORN) < 2 * u
            ? " The readings leave open on which side of 80 % it is."
            : "";
    return Meaning.of(
        share < BatteryCapacity.WORN
            ? "With " + percent(share) + " it is worn: from here it loses capacity fast." + close
            : "With " + percent(share) + " it still serves." + close);
  }
}
