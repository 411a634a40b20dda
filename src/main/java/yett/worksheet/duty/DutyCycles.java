package yett.worksheet.duty;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.calculation.DutyCycle;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Cycles an hour against what the operator is rated for. Source: {@link DutyCycle}. */
final class DutyCycles extends Worksheet {
  DutyCycles() {
    super(Subject.DUTY, "duty-cycles", "cycles an hour against the operator's rating");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("per-hour", Unit.ONE, "cycles in the busiest hour").possible(0, 600),
        Input.reading("run-time", Unit.SECOND, "time it runs in opening and closing together")
            .possible(1, 1200),
        Input.choice(
                "class",
                "vehicular class of the gate (UL 325, ASTM F2200)",
                new Choice("class-1", "Class I, a home of up to four families"),
                new Choice("class-2", "Class II, open to the public or five homes and more"),
                new Choice("class-3", "Class III, industrial, not for the public"),
                new Choice("class-4", "Class IV, guarded or restricted"))
            .usually("class-2"),
        Input.reading("rated", Unit.ONE, "cycles an hour on the nameplate")
            .mayBeLeftOut()
            .possible(1, 600),
        Input.reading("rated-share", Unit.PERCENT, "duty on the motor's nameplate (S3)")
            .mayBeLeftOut()
            .possible(5, 100));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("share", Unit.PERCENT, "share of time running"),
        Output.reading("allowed", Unit.ONE, "cycles an hour allowed"),
        Output.reading("used", Unit.PERCENT, "of that used"),
        Output.reading("rest", Unit.SECOND, "rest between cycles"));
  }

  @Override
  public String formula() {
    return "share = n t/3600; allowed = the least of the nameplate's cycles (or what is usual for"
        + " the class) and S 3600/t; n cycles an hour, t run time, S duty on the motor's"
        + " nameplate; rest = 3600/allowed - t";
  }

  @Override
  public String validity() {
    return "UL 325 and ASTM F2200 sort gates by who uses them, not by cycles: without a nameplate,"
        + " 10, 20, 30 and 30 an hour for Class I to IV are a considered judgement, for"
        + " comparison only.";
  }

  @Override
  public String source() {
    return "classes of UL 325 and ASTM F2200; duty S3 of IEC 60034-1; cycles by class are a"
        + " considered judgement";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Nameplate and maker's instructions say how many cycles the operator is built for.");
  }

  @Override
  protected Results work(Entries entries) {
    double time = entries.in("run-time", Unit.SECOND);
    double perHour = entries.in("per-hour", Unit.ONE);
    if (perHour * time > 3600) {
      throw new InputException(
          "So many cycles do not fit into an hour; look at per-hour and run-time.");
    }
    double allowed =
        Math.min(
            entries.has("rated") ? entries.in("rated", Unit.ONE) : usual(entries),
            (entries.has("rated-share") ? entries.fraction("rated-share") : 1) * 3600 / time);
    return new Results()
        .with("share", 100 * DutyCycle.share(perHour, time), Unit.PERCENT)
        .with("allowed", allowed, Unit.ONE)
        .with("used", 100 * perHour / allowed, Unit.PERCENT)
        .with("rest", Math.max(0, 3600 / allowed - time), Unit.SECOND);
  }

  private static double usual(Entries entries) {
    String users = entries.choice("class").id().toUpperCase(Locale.ROOT).replace('-', '_');
    return DutyCycle.Users.valueOf(users).usualPerHour();
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double used = results.in("used", Unit.PERCENT) / 100;
    String basis =
        entries.has("rated") || entries.has("rated-share")
            ? "the nameplate allows"
            : "is usual for its class";
    return Meaning.of(
        used > 1
            ? "It is worked harder than "
                + basis
                + ": expect thermal trips in the busy hour, worn brushes and batteries that never"
                + " fill."
            : "It is within what "
                + basis
                + "; a thermal trip has another reason: drag, weak supply, heat.",
        "One cycle after the other needs "
            + tell(results.in("rest", Unit.SECOND), Unit.SECOND)
            + " of rest in between.");
  }
}
