package yett.worksheet.battery;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
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
 * A day's balance of charge with the mains on: I h/(charge factor) against n q + 24 Is. Source:
 * {@link DayOfCycles}.
 */
final class ChargerBalance extends Worksheet {
  ChargerBalance() {
    super(Subject.BATTERY, "charger-balance", "whether a charger keeps up with a day's cycles");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("charger-current", Unit.AMPERE, "current the charger can give")
            .possible(0.05, 100),
        Input.reading("cycles", Unit.ONE, "cycles a day").possible(0, 3000),
        Input.reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
            .possible(0.1, 100),
        Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
            .possible(1, 1200),
        Input.reading("standing-current", Unit.AMPERE, "current while the gate stands")
            .usually("0.15 A")
            .possible(0, 10),
        Input.reading("mains-hours", Unit.HOUR, "hours a day with mains")
            .usually("24 h")
            .possible(0, 24),
        Input.reading("charge-factor", Unit.PERCENT, "charge to put in for what was taken")
            .usually("110 %")
            .possible(100, 200)
            .good(105, 130),
        Input.reading("capacity", Unit.AMPERE_HOUR, "capacity printed on each block")
            .mayBeLeftOut()
            .possible(0.5, 500));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("drawn", Unit.AMPERE_HOUR, "drawn in a day"),
        Output.reading("given", Unit.AMPERE_HOUR, "given in a day, at most"),
        Output.reading("balance", Unit.AMPERE_HOUR, "left over"),
        Output.reading("most-cycles", Unit.ONE, "cycles a day it carries"),
        Output.reading("refill", Unit.HOUR, "hours to refill"));
  }

  @Override
  public String formula() {
    return "given = I h/f, drawn = n I_m t/3600 + 24 Is; refill = f C/(I - Is), at least; f charge"
        + " factor, h hours with mains, n cycles, t run time, Is standing current, C capacity";
  }

  @Override
  public String validity() {
    return "Chargers taper off: the last fifth takes hours longer than the refill time says."
        + " Lead-acid should not be charged with more than about 0.3 A for each Ah unless"
        + " its data sheet says so.";
  }

  @Override
  public String source() {
    return "balance of charge; 110 % and 0.3 A for each Ah from a battery maker's charging"
        + " instructions";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Battery.DATA_SHEET);
  }

  @Override
  protected Results work(Entries entries) {
    double factor = entries.fraction("charge-factor");
    double current = entries.in("charger-current", Unit.AMPERE);
    double standing = entries.in("standing-current", Unit.AMPERE);
    double cycle =
        DayOfCycles.cycle(
            entries.in("motor-current", Unit.AMPERE), entries.in("run-time", Unit.SECOND));
    double given = current * entries.in("mains-hours", Unit.HOUR) / factor;
    double drawn = DayOfCycles.drawn(entries.in("cycles", Unit.ONE), cycle, standing);
    Results results =
        new Results()
            .with("drawn", drawn, Unit.AMPERE_HOUR)
            .with("given", given, Unit.AMPERE_HOUR)
            .with("balance", given - drawn, Unit.AMPERE_HOUR)
            .with(
                "most-cycles",
                Math.floor(
                    DayOfCycles.carried(given, DayOfCycles.drawn(0, cycle, standing), cycle)),
                Unit.ONE);
    if (entries.has("capacity") && current > standing) {
      results.with(
          "refill",
          factor * entries.in("capacity", Unit.AMPERE_HOUR) / (current - standing),
          Unit.HOUR);
    }
    return results;
  }

  @Override
  protected List<String> remarks(Entries entries, Results results) {
    return entries.has("capacity")
            && entries.in("charger-current", Unit.AMPERE)
                > 0.3 * entries.in("capacity", Unit.AMPERE_HOUR)
        ? List.of(
            "The charger gives more than 0.3 A for each Ah; look at the battery's data sheet.")
        : List.of();
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double balance = results.in("balance", Unit.AMPERE_HOUR);
    return Meaning.of(
        balance < 0
            ? "The charger falls behind by "
                + tell(-balance, Unit.AMPERE_HOUR)
                + " a day: batteries that are always low need no new batteries but fewer cycles,"
                + " less standing draw or a stronger charger."
            : "The charger keeps up; batteries that are low all the same point to the charger's"
                + " output, a joint, or worn blocks.",
        "It carries up to "
            + tell(results.in("most-cycles", Unit.ONE), Unit.ONE)
            + " cycles a day.");
  }
}
