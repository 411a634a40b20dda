package yett.worksheet.duty;

import yett.calculation.DutyCycle;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Cycle;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Compares cycles an hour with the operator's rating. Source: {@link DutyCycle}. */
final class DutyCycles extends Worksheet {
  DutyCycles() {
    super(Subject.DUTY, "duty-cycles", "cycles an hour against the operator's rating");
    asks(
        reading("per-hour", Unit.ONE, "cycles in the busiest hour").possible(0, 600),
        Cycle.runTime(),
        choice(
                "class",
                "vehicular class of the gate (UL 325, ASTM F2200)",
                new Choice("class-1", "Class I, a home of up to four families"),
                new Choice("class-2", "Class II, open to the public or five homes and more"),
                new Choice("class-3", "Class III, industrial, not for the public"),
                new Choice("class-4", "Class IV, guarded or restricted"))
            .usually("class-2"),
        reading("rated", Unit.ONE, "cycles an hour on the nameplate")
            .mayBeLeftOut()
            .possible(1, 600),
        reading("rated-share", Unit.PERCENT, "duty on the motor's nameplate (S3)")
            .mayBeLeftOut()
            .possible(5, 100));
    refuses(
        v -> v.of("per-hour") * v.of("run-time") > 3600,
        "So many cycles do not fit into an hour: check per-hour and run-time.");
    tells(
        number("share", Unit.PERCENT, "share of time running")
            .by(v -> 100 * DutyCycle.share(v.of("per-hour"), v.of("run-time"))),
        number("allowed", Unit.ONE, "cycles an hour allowed")
            .by(
                v ->
                    Math.min(
                        v.has("rated") ? v.of("rated") : usual(v),
                        (v.has("rated-share") ? v.fraction("rated-share") : 1)
                            * 3600
                            / v.of("run-time"))),
        number("used", Unit.PERCENT, "of that used")
            .by(v -> 100 * v.of("per-hour") / v.of("allowed")),
        number("rest", Unit.SECOND, "rest between cycles")
            .by(v -> Math.max(0, 3600 / v.of("allowed") - v.of("run-time"))));
    works(
        phrase("basis")
            .by(
                v ->
                    v.has("rated") || v.has("rated-share")
                        ? "the nameplate allows"
                        : "is usual for its class"));
    formula(
        "share = n t/3600; allowed = the least of the nameplate's cycles (or what is usual for the"
            + " class) and S 3600/t; n cycles an hour, t run time, S duty on the motor's nameplate;"
            + " rest = 3600/allowed - t");
    validity(
        "UL 325 and ASTM F2200 sort gates by who uses them, not by cycles: without a nameplate, 10,"
            + " 20, 30 and 30 an hour for Class I to IV are a considered judgement, for comparison"
            + " only.");
    source(
        "classes of UL 325 and ASTM F2200; duty S3 of IEC 60034-1; cycles by class are a considered"
            + " judgement");
    lastWord("Nameplate and maker's instructions say how many cycles the operator is built for.");
    says(
        when(
            v -> v.of("used") > 100,
            "It is worked harder than {basis}: expect thermal trips in the busy hour, worn brushes"
                + " and batteries that never fill."),
        otherwise(
            "It is within what {basis}; a thermal trip has another reason: drag, weak supply,"
                + " heat."));
    says("One cycle after the other needs {rest} of rest in between.");
  }

  private static double usual(Values v) {
    return v.choice("class", DutyCycle.Users.class).usualPerHour();
  }
}
