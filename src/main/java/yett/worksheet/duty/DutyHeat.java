package yett.worksheet.duty;

import yett.calculation.DutyCycle;
import yett.quantity.Unit;
import yett.worksheet.Cycle;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Compares the heating of a motor that runs and rests in turn with its rating. Source: {@link
 * DutyCycle}.
 */
final class DutyHeat extends Worksheet {
  DutyHeat() {
    super(Subject.DUTY, "duty-heat", "whether the motor runs too hot at this pace");
    asks(
        reading("rated-current", Unit.AMPERE, "rated steady current of the motor")
            .possible(0.1, 200),
        reading("motor-current", Unit.AMPERE, "current of the motor while it runs")
            .possible(0.1, 400),
        Cycle.runTime(),
        reading("per-hour", Unit.ONE, "cycles an hour").possible(0.1, 600),
        reading(
                "start-current",
                Unit.AMPERE,
                "current at a start; three times the running one if left out")
            .mayBeLeftOut()
            .possible(0.1, 1000),
        reading("start-time", Unit.SECOND, "how long a start takes")
            .usually("0.5 s")
            .possible(0, 10),
        reading("time-constant", Unit.MINUTE, "time constant of the motor's heating")
            .usually("20 min")
            .possible(1, 240)
            .good(5, 60));
    refuses(
        v -> v.of("period") < v.of("run-time") || 2 * v.of("start-time") > v.of("run-time"),
        "The times do not fit: two starts within the run, and all runs within the hour.");
    tells(
        number("heating", Unit.AMPERE, "equal heating current")
            .by(
                v ->
                    DutyCycle.heatingCurrent(
                        v.of("motor-current"),
                        v.of("run-time"),
                        v.of("start"),
                        v.of("start-time"),
                        v.of("period"))),
        number("heat", Unit.PERCENT, "heat against the rating")
            .by(v -> 100 * Math.pow(v.of("heating") / v.of("rated-current"), 2)),
        number("most", Unit.ONE, "cycles an hour, at most")
            .by(v -> Math.min(v.of("per-hour") / v.fraction("heat"), 3600 / v.of("run-time"))),
        number("nonstop", Unit.MINUTE, "nonstop from cold")
            .by(Unit.SECOND, DutyHeat::nonstop)
            .when(v -> Double.isFinite(nonstop(v))));
    works(
        step("start", Unit.AMPERE)
            .by(v -> v.has("start-current") ? v.of("start-current") : 3 * v.of("motor-current")),
        step("period", Unit.SECOND).by(v -> 3600 / v.of("per-hour")),
        step("over", Unit.PERCENT).by(v -> 100 * v.of("motor-current") / v.of("rated-current")),
        step("bears", Unit.ONE).by(v -> Math.floor(v.of("most"))));
    formula(
        "Ih = sqrt((2 Is2 ts + I2 (t - 2 ts))/T), heat (Ih/Ir)2; nonstop tau ln(i2/(i2 - 1)), i ="
            + " I/Ir; T time from cycle to cycle, t run time, Is for ts at a start, Ir rated"
            + " current");
    validity(
        "Cycles much shorter than the time constant; near 25 degC and shaded. In a sunny cabinet at"
            + " 40 degC a motor bears about four fifths of the heat. A time constant of 20 min is a"
            + " considered judgement for gate motors.");
    source(
        "heating with the square of the current, textbook; periodic duty of IEC 60034-1; thermal"
            + " curve of IEC 60255-149; three times the current at a start from common practice");
    lastWord("The motor's nameplate and the maker's instructions take precedence.");
    notes(
        Note.caution(
            "A motor that trips is hot enough to burn a hand, and may start again by itself when it"
                + " has cooled. Switch off before you touch it."));
    says(
        when(
            v -> v.of("heat") > 100,
            "At this pace the motor takes {heat} of the heat it is rated for and will trip;"
                + " it can take {bears} cycles an hour."),
        otherwise("The motor takes {heat} of the heat it is rated for: it may go on like this."));
    says(
        when(
            v -> v.of("over") > 120,
            "It draws {over} of its rated current while it runs: look for drag in leaf, rollers and"
                + " chain first."));
  }

  private static double nonstop(Values v) {
    return DutyCycle.timeToLimit(
        v.of("motor-current"), v.of("rated-current"), v.in("time-constant", Unit.SECOND));
  }
}
