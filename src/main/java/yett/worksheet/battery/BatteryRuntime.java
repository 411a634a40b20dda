package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.BatteryCapacity;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Time a battery gives a steady current: t = H (C/(I H))^k, with the capacity that temperature, age
 * and charge leave. Source: {@link BatteryCapacity#runtime}.
 */
final class BatteryRuntime extends Worksheet {
  BatteryRuntime() {
    super(Subject.BATTERY, "battery-runtime", "how long batteries carry a steady current");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Battery.capacity(),
        Input.reading("current", Unit.AMPERE, "steady current drawn").possible(0.001, 500),
        Battery.charge(),
        Battery.temperature(),
        Battery.age(),
        Battery.life(),
        Battery.exponent(),
        Input.reading("rated-time", Unit.HOUR, "time to which the printed capacity belongs")
            .usually("20 h")
            .possible(1, 100));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("runtime", Unit.HOUR, "runtime"),
        Output.reading("given", Unit.AMPERE_HOUR, "charge it gives"),
        Output.reading("left", Unit.PERCENT, "left by age and charge"),
        Output.reading("cold", Unit.PERCENT, "capacity at temperature"));
  }

  @Override
  public String formula() {
    return "t = H (C/(I H))^k, not more than C/I; C = rated x charge x (1 - 0.2 age/life) x"
        + " capacity at temperature; H rated time, I current, k Peukert exponent";
  }

  @Override
  public String validity() {
    return "Constant current from C/20 to C, to the end voltage of the data sheet. A pair in series"
        + " has the capacity of one block. Age is a rule of thumb: a test tells more"
        + " (battery-capacity).";
  }

  @Override
  public String source() {
    return "Peukert's law in the form with the rated time; capacity by temperature from battery"
        + " data sheets; 80 % at the end of design life after IEEE 450 and 1188, straight"
        + " line in between from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Battery.DATA_SHEET);
  }

  @Override
  protected Results work(Entries entries) {
    double temperature = Battery.held(entries);
    double left = Battery.left(entries);
    double current = entries.in("current", Unit.AMPERE);
    double hours =
        BatteryCapacity.runtime(
            entries.in("capacity", Unit.AMPERE_HOUR),
            entries.in("rated-time", Unit.HOUR),
            current,
            entries.in("peukert", Unit.ONE),
            left,
            temperature);
    return new Results()
        .with("runtime", hours, Unit.HOUR)
        .with("given", hours * current, Unit.AMPERE_HOUR)
        .with("left", 100 * left, Unit.PERCENT)
        .with("cold", 100 * BatteryCapacity.atTemperature(temperature, hours), Unit.PERCENT);
  }

  @Override
  protected List<String> remarks(Entries entries, Results results) {
    double share = entries.in("current", Unit.AMPERE) / entries.in("capacity", Unit.AMPERE_HOUR);
    return share > 1
        ? List.of("More than 1 A for each Ah is beyond Peukert's law; it will last less than this.")
        : List.of();
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double given = results.in("given", Unit.AMPERE_HOUR);
    double rated = entries.in("capacity", Unit.AMPERE_HOUR);
    return Meaning.of(
        "At "
            + entries.shown("current")
            + " it gives "
            + tell(given, Unit.AMPERE_HOUR)
            + " of the printed "
            + tell(rated, Unit.AMPERE_HOUR)
            + " before the controller cuts out.",
        "A gate that stops much sooner has worn or uncharged batteries.");
  }
}
