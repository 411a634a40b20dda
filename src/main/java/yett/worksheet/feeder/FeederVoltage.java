package yett.worksheet.feeder;

import yett.calculation.MainsLoad;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Mains voltage at the operator while it runs: V - 2 I L R', where the mains current I = (24 V Im +
 * Pc)/(η V) follows from the motor current Im. Source: {@link MainsLoad}, {@code Conductor}.
 */
final class FeederVoltage extends Worksheet {
  FeederVoltage() {
    super(Subject.FEEDER, "feeder-voltage", "mains at the operator while the motor runs");
    asks(
        reading("supply", Unit.VOLT, "mains where the feeder begins, or at standstill")
            .possible(80, 500),
        reading("motor-current", Unit.AMPERE, "current of the 24 V motor while it runs")
            .possible(0, 60),
        Wire.length(),
        Wire.size(),
        Wire.strands(),
        Wire.temperature(),
        reading("charging", Unit.WATT, "power that charging takes meanwhile")
            .usually("120 W")
            .possible(0, 1000),
        reading("efficiency", Unit.PERCENT, "efficiency of the supply, power factor included")
            .usually("75 %")
            .possible(10, 100)
            .good(50, 95),
        reading("measured", Unit.VOLT, "mains read at the operator under that load")
            .mayBeLeftOut()
            .possible(0, 500));
    refuses(
        v -> v.of("drop") >= v.of("supply"),
        "The wire would lose more than the whole voltage; look at length and size.");
    tells(
        number("mains-current", Unit.AMPERE, "current in the feeder")
            .by(
                v ->
                    MainsLoad.current(
                        v.of("motor-current"),
                        v.of("charging"),
                        v.fraction("efficiency"),
                        v.of("supply"))),
        number("drop", Unit.VOLT, "voltage lost in the wire")
            .by(v -> Wire.drop(v, Wire.chosen(v), v.of("mains-current"))),
        number("share", Unit.PERCENT, "share of the supply")
            .by(v -> 100 * v.of("drop") / v.of("supply")),
        number("terminals", Unit.VOLT, "voltage at the operator")
            .by(v -> v.of("supply") - v.of("drop")),
        number("unexplained", Unit.VOLT, "lost beyond the wire")
            .by(v -> v.of("terminals") - v.of("measured"))
            .given("measured"),
        number("joints", Unit.OHM, "resistance of joints")
            .by(v -> v.of("unexplained") / v.of("mains-current"))
            .when(v -> v.has("measured") && v.of("unexplained") > 0 && v.of("mains-current") > 0));
    works(step("carried", Unit.AMPERE).by(v -> v.of("mains-current")), Wire.allowed());
    formula(
        "V - 2 I L R', I = (24 V Im + Pc)/(e V); Im motor current, Pc charging power, e efficiency,"
            + " L length one way, R' resistance per length");
    validity(
        "One phase; wire only. The efficiency is a considered judgement: a clamp meter around one"
            + " conductor of the feeder tells the current better (feeder-drop takes it).");
    source(
        Wire.SOURCE
            + "; fuse by "
            + Wire.FLOOR
            + "; power balance of the supply, with 120 W and 75 % from common practice");
    lastWord(Wire.DECIDES);
    notes(
        Note.danger(
            "The mains terminals are live while this is read. Shock or arc can kill. Only an"
                + " electrician reads there, with the leaf clear of people."));
    says(Wire.tooThin());
    says(
        when(
            v -> v.of("share") > 3,
            "The feeder itself loses {share}, more than the advised 3 %: the operator is starved"
                + " whenever it works."),
        otherwise("The feeder loses little: {share} while it works."));
    says(
        when(v -> !v.has("measured")),
        when(
            v -> v.of("unexplained") > 0.01 * v.of("supply"),
            "{unexplained} more is lost than wire explains: look for a hot or corroded joint, or a"
                + " weak service that sags before the feeder."),
        otherwise("The reading fits the wire; there is no sign of a bad joint."));
  }
}
