package yett.worksheet.feeder;

import yett.calculation.Conductor;
import yett.calculation.WireProtection;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Voltage lost in a pair of wires: V = 2 I L R', with current I (A), length one way L (m) and
 * resistance per length R' (ohm/m) at the wire's temperature. Source: {@link Conductor}.
 */
final class FeederDrop extends Worksheet {
  FeederDrop() {
    super(Subject.FEEDER, "feeder-drop", "voltage lost in a pair of wires");
    asks(
        Wire.supply(),
        Wire.current(),
        Wire.length(),
        Wire.size(),
        Wire.strands(),
        Wire.temperature(),
        Wire.breaker(),
        Wire.limit());
    tells(
        number("drop", Unit.VOLT, "voltage lost")
            .by(v -> Wire.drop(v, Wire.chosen(v), v.of("current"))),
        number("share", Unit.PERCENT, "share of the supply")
            .by(v -> 100 * v.of("drop") / v.of("supply")),
        number("left", Unit.VOLT, "left at the end")
            .by(v -> v.of("supply") - v.of("drop"))
            .when(v -> v.of("drop") < v.of("supply")),
        number("resistance", Unit.OHM, "resistance of both wires")
            .by(v -> v.of("drop") / v.of("current")),
        number("longest", Unit.METRE, "longest run at the limit")
            .by(
                v ->
                    Wire.chosen(v)
                        .longestRun(
                            v.of("current"),
                            v.of("wire-temperature"),
                            v.fraction("limit") * v.of("supply"))),
        number("carries", Unit.AMPERE, "largest fuse for it")
            .by(v -> WireProtection.largest(Wire.chosen(v))));
    works(step("carried", Unit.AMPERE).by(Wire::carried), Wire.allowed());
    formula(
        "V = 2 I L R', R' = R'ref (1 + a (T - Tref)); I current, L length one way, R' resistance"
            + " per length, T temperature of the wire, a = 0.00323/K at 75 degC (AWG) or 0.00393/K"
            + " at 20 degC (mm2)");
    validity(
        "Direct current, or one phase at 50 or 60 Hz up to about 4 AWG (25 mm2), where reactance is"
            + " small; copper; wire only, without joints.");
    source(
        Wire.SOURCE
            + "; fuse by "
            + Wire.FLOOR
            + "; the advised 3 % (5 % with the branch behind it) is an informational note to NEC"
            + " 210.19 and 215.2, and common practice on 24 V");
    lastWord(Wire.DECIDES);
    notes(
        Note.warning(
            "Mains can kill. Only an electrician reads voltage at open mains terminals, and joins"
                + " or changes a feeder."));
    says(Wire.tooThin());
    says(
        when(
            v -> !v.has("left"),
            "This wire cannot carry that current over this length at all: it would take more than"
                + " the whole voltage."),
        when(
            v -> v.of("share") > v.of("limit"),
            "The wire is too thin or too long: it loses {share}."),
        otherwise("Its loss is small enough: {share} at this load."));
    says(when(v -> v.of("share") > v.of("limit"), "{size} keeps within {limit} up to {longest}."));
    says(
        when(
            v -> v.has("left"),
            "Under this load expect {left} at the end; a reading clearly below that points to"
                + " a bad joint rather than to the wire."));
  }
}
