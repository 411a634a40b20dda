package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.BatteryCapacity;
import yett.calculation.DayOfCycles;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Cycles that a pair of batteries carries without mains. A cycle draws I t; at a current above the
 * rated one it counts (I H/C)^(k-1) times as much, as in Peukert's law. Source: {@link
 * DayOfCycles}, {@link BatteryCapacity}.
 */
final class BatteryCycles extends Worksheet {
  BatteryCycles() {
    super(Subject.BATTERY, "battery-cycles", "cycles that batteries carry without mains");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Battery.capacity(),
        Input.reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
            .possible(0.1, 100),
        Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
            .possible(1, 1200),
        Input.reading("standing-current", Unit.AMPERE, "current while the gate stands")
            .usually("0.15 A")
            .possible(0, 10),
        Input.reading("per-hour", Unit.ONE, "cycles an hour").usually("4").possible(0, 120),
        Battery.charge(),
        Battery.temperature(),
        Battery.age(),
        Battery.life(),
        Battery.exponent());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("cycle", Unit.AMPERE_HOUR, "charge of one cycle"),
        Output.reading("nonstop", Unit.ONE, "cycles without a pause"),
        Output.reading("cycles", Unit.ONE, "cycles at that pace"),
        Output.reading("hours", Unit.HOUR, "hours at that pace"),
        Output.reading("standing", Unit.HOUR, "hours without any cycle"));
  }

  @Override
  public String formula() {
    return "hours = C/(n q f + Is); q = I t/3600, f = (20 h I/C)^(k-1), at least 1; C = rated x"
        + " charge x (1 - 0.2 age/life) x capacity at temperature; n cycles an hour, Is"
        + " standing current";
  }

  @Override
  public String validity() {
    return "A cautious estimate: batteries recover between cycles, which Peukert's law does not"
        + " know. The controller may cut out earlier, at its own low-voltage limit, when the"
        + " motor starts.";
  }

  @Override
  public String source() {
    return "balance of charge with Peukert's law; capacity by temperature from battery data sheets;"
        + " age from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "What a gate must do when the supply fails, and how long, is for the local code and the"
            + " fire service where it stands in an escape or access way.");
  }

  @Override
  protected Results work(Entries entries) {
    double temperature = Battery.held(entries);
    double motor = entries.in("motor-current", Unit.AMPERE);
    double capacity =
        entries.in("capacity", Unit.AMPERE_HOUR)
            * Battery.left(entries)
            * BatteryCapacity.atTemperature(temperature, 20);
    double cycle = DayOfCycles.cycle(motor, entries.in("run-time", Unit.SECOND));
    double heavy =
        cycle * Math.max(1, Math.pow(20 * motor / capacity, entries.in("peukert", Unit.ONE) - 1));
    double perHour = entries.in("per-hour", Unit.ONE);
    double standing = entries.in("standing-current", Unit.AMPERE);
    if (perHour * entries.in("run-time", Unit.SECOND) > 3600) {
      throw new InputException("So many cycles do not fit into an hour; per-hour or run-time.");
    }
    double draw = perHour * heavy + standing;
    Results results =
        new Results()
            .with("cycle", cycle, Unit.AMPERE_HOUR)
            .with("nonstop", Math.floor(capacity / heavy), Unit.ONE);
    if (draw > 0) {
      results
          .with("cycles", Math.floor(perHour * capacity / draw), Unit.ONE)
          .with("hours", capacity / draw, Unit.HOUR);
    }
    if (standing > 0) {
      results.with("standing", capacity / standing, Unit.HOUR);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    if (!results.has("hours")) {
      return Meaning.of(
          "Without cycles and standing current they last until they discharge themselves.");
    }
    double hours = results.in("hours", Unit.HOUR);
    return Meaning.of(
        "After the mains fails it goes on for about "
            + tell(hours, Unit.HOUR)
            + (hours >= 48 ? " (" + tell(hours / 24, Unit.DAY) + ")" : "")
            + ", "
            + tell(results.in("cycles", Unit.ONE), Unit.ONE)
            + " cycles at this pace.",
        "A gate that gives up after a few cycles has batteries that are flat or worn, whatever they"
            + " show at rest.");
  }
}
