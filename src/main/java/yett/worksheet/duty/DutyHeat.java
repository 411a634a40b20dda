package yett.worksheet.duty;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.DutyCycle;
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

/** Heat of a motor that runs and rests in turn, against its rating. Source: {@link DutyCycle}. */
final class DutyHeat extends Worksheet {
  DutyHeat() {
    super(Subject.DUTY, "duty-heat", "whether the motor runs too hot at this pace");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("rated-current", Unit.AMPERE, "rated steady current of the motor")
            .possible(0.1, 200),
        Input.reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
            .possible(0.1, 400),
        Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
            .possible(1, 1200),
        Input.reading("per-hour", Unit.ONE, "cycles an hour").possible(0.1, 600),
        Input.reading(
                "start-current",
                Unit.AMPERE,
                "current at a start; three times the running one if left out")
            .mayBeLeftOut()
            .possible(0.1, 1000),
        Input.reading("start-time", Unit.SECOND, "how long a start takes")
            .usually("0.5 s")
            .possible(0, 10),
        Input.reading("time-constant", Unit.MINUTE, "time constant of the motor's heating")
            .usually("20 min")
            .possible(1, 240)
            .good(5, 60));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("heating", Unit.AMPERE, "current that heats alike"),
        Output.reading("heat", Unit.PERCENT, "heat against the rating"),
        Output.reading("most", Unit.ONE, "cycles an hour it bears"),
        Output.reading("nonstop", Unit.MINUTE, "nonstop from cold"));
  }

  @Override
  public String formula() {
    return "Ih = sqrt((2 Is2 ts + I2 (t - 2 ts))/T), heat (Ih/Ir)2; nonstop tau ln(i2/(i2 - 1)), i"
        + " = I/Ir; T time from cycle to cycle, t run time, Is for ts at a start, Ir rated"
        + " current";
  }

  @Override
  public String validity() {
    return "Cycles much shorter than the time constant; near 25 degC and shaded. In a sunny cabinet"
        + " at 40 degC a motor bears about four fifths of the heat. A time constant of 20"
        + " min is a considered judgement for gate motors.";
  }

  @Override
  public String source() {
    return "heating with the square of the current, textbook; periodic duty of IEC 60034-1; thermal"
        + " curve of IEC 60255-149; three times the current at a start from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of("The motor's nameplate and the maker's instructions go first.");
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.caution(
            "A motor that trips is hot enough to burn a hand, and may start again by itself when it"
                + " has cooled. Switch off before you touch it."));
  }

  @Override
  protected Results work(Entries entries) {
    double current = entries.in("motor-current", Unit.AMPERE);
    double rated = entries.in("rated-current", Unit.AMPERE);
    double time = entries.in("run-time", Unit.SECOND);
    double startTime = entries.in("start-time", Unit.SECOND);
    double start =
        entries.has("start-current") ? entries.in("start-current", Unit.AMPERE) : 3 * current;
    double period = 3600 / entries.in("per-hour", Unit.ONE);
    if (period < time || 2 * startTime > time) {
      throw new InputException(
          "The times do not fit: two starts within the run, and all runs within the hour.");
    }
    double heating = DutyCycle.heatingCurrent(current, time, start, startTime, period);
    double heat = Math.pow(heating / rated, 2);
    Results results =
        new Results()
            .with("heating", heating, Unit.AMPERE)
            .with("heat", 100 * heat, Unit.PERCENT)
            .with("most", Math.min(entries.in("per-hour", Unit.ONE) / heat, 3600 / time), Unit.ONE);
    double nonstop =
        DutyCycle.timeToLimit(current, rated, entries.in("time-constant", Unit.SECOND));
    if (Double.isFinite(nonstop)) {
      results.with("nonstop", nonstop, Unit.SECOND);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double heat = results.in("heat", Unit.PERCENT) / 100;
    double over =
        entries.in("motor-current", Unit.AMPERE) / entries.in("rated-current", Unit.AMPERE);
    Meaning meaning =
        Meaning.of(
            heat > 1
                ? "At this pace the motor takes "
                    + percent(heat)
                    + " of the heat it is rated for and will trip; it bears "
                    + tell(Math.floor(results.in("most", Unit.ONE)), Unit.ONE)
                    + " cycles an hour."
                : "The motor takes "
                    + percent(heat)
                    + " of the heat it is rated for: it may go on like this.");
    return over > 1.2
        ? meaning.and(
            "It draws "
                + percent(over)
                + " of its rated current while it runs: look for drag in leaf, rollers and chain"
                + " first.")
        : meaning;
  }
}
