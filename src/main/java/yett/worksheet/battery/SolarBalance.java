package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.BatteryCapacity;
import yett.calculation.DayOfCycles;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * A day's balance of energy on a solar gate: P h η against n V I t + 24 V Is. Source: {@link
 * DayOfCycles}.
 */
final class SolarBalance extends Worksheet {
  SolarBalance() {
    super(Subject.BATTERY, "solar-balance", "whether the sun keeps up with a day's cycles");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("panel", Unit.WATT, "power of all panels, as rated").possible(1, 5000),
        Input.reading("sun-hours", Unit.HOUR, "hours of full sun a day, in the darkest month")
            .possible(0.1, 10),
        Input.reading("cycles", Unit.ONE, "cycles a day").possible(0, 3000),
        Input.reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
            .possible(0.1, 100),
        Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
            .possible(1, 1200),
        Input.reading("standing-current", Unit.AMPERE, "current while the gate stands")
            .usually("0.05 A")
            .possible(0, 10),
        Input.reading("share", Unit.PERCENT, "share of the panel's power that gets stored")
            .usually("60 %")
            .possible(5, 100)
            .good(40, 80),
        Input.reading("battery-voltage", Unit.VOLT, "voltage of the batteries")
            .usually("24 V")
            .possible(10, 60),
        Input.reading("capacity", Unit.AMPERE_HOUR, "capacity printed on each block")
            .mayBeLeftOut()
            .possible(0.5, 500));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("harvest", Unit.WATT_HOUR, Unit.WATT_HOUR, "stored in a day"),
        Output.reading("need", Unit.WATT_HOUR, Unit.WATT_HOUR, "needed in a day"),
        Output.reading("balance", Unit.WATT_HOUR, Unit.WATT_HOUR, "left over"),
        Output.reading("most-cycles", Unit.ONE, "cycles a day it carries"),
        Output.reading("least-panel", Unit.WATT, "panel for these cycles"),
        Output.reading("dark-days", Unit.DAY, "days without sun"));
  }

  @Override
  public String formula() {
    return "stored = P h e, needed = V (n I t/3600 + 24 Is); P panel, h hours of 1000 W/m2, e share"
        + " stored, n cycles, I motor current, t run time, Is standing current; days without sun ="
        + " 0.8 C V/needed";
  }

  @Override
  public String validity() {
    return "Averages over a month; a foggy week is worse than its month. Sun hours are those on the"
        + " panel's own slope, unshaded: one shaded cell can halve a panel.";
  }

  @Override
  public String source() {
    return "balance of energy, textbook; a share of 0.5 to 0.7 stored (heat, dirt, wiring, a charge"
        + " controller that does not track, charging losses) and a depth of 80 % from common"
        + " practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Sun hours of the place come from a published solar atlas; the data sheets of panel,"
            + " controller and battery go first.");
  }

  @Override
  protected Results work(Entries entries) {
    double volts = entries.in("battery-voltage", Unit.VOLT);
    double standing = entries.in("standing-current", Unit.AMPERE);
    double cycle =
        DayOfCycles.cycle(
            entries.in("motor-current", Unit.AMPERE), entries.in("run-time", Unit.SECOND));
    double hours = entries.in("sun-hours", Unit.HOUR);
    double share = entries.fraction("share");
    double harvest = DayOfCycles.harvest(entries.in("panel", Unit.WATT), hours, share);
    double need = volts * DayOfCycles.drawn(entries.in("cycles", Unit.ONE), cycle, standing);
    Results results =
        new Results()
            .with("harvest", harvest, Unit.WATT_HOUR)
            .with("need", need, Unit.WATT_HOUR)
            .with("balance", harvest - need, Unit.WATT_HOUR)
            .with(
                "most-cycles",
                Math.floor(
                    DayOfCycles.carried(
                        harvest, volts * DayOfCycles.drawn(0, cycle, standing), volts * cycle)),
                Unit.ONE)
            .with("least-panel", need / (hours * share), Unit.WATT);
    if (entries.has("capacity") && need > 0) {
      results.with(
          "dark-days",
          BatteryCapacity.WORN * volts * entries.in("capacity", Unit.AMPERE_HOUR) / need,
          Unit.DAY);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double balance = results.in("balance", Unit.WATT_HOUR);
    Meaning meaning =
        Meaning.of(
            balance < 0
                ? "The sun falls behind by "
                    + tell(-balance, Unit.WATT_HOUR)
                    + " a day: batteries run down however good they are. "
                    + tell(results.in("least-panel", Unit.WATT), Unit.WATT)
                    + " of panel would carry it."
                : "The sun keeps up in that month, with "
                    + tell(balance, Unit.WATT_HOUR)
                    + " a day to spare.");
    double standing =
        24 * entries.in("battery-voltage", Unit.VOLT) * entries.in("standing-current", Unit.AMPERE);
    return standing > results.in("need", Unit.WATT_HOUR) / 2
        ? meaning.and(
            "More than half goes into standing: look for a receiver, a loop detector or a light"
                + " that never sleeps.")
        : meaning;
  }
}
