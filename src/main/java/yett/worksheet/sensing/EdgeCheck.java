package yett.worksheet.sensing;

import yett.calculation.EdgeResistor;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * The right reading of a contact edge with an end resistor, and what a wrong one means. Source:
 * {@link EdgeResistor}.
 */
final class EdgeCheck extends Worksheet {
  EdgeCheck() {
    super(Subject.SENSING, "edge-resistor", "what an idle contact edge should read");
    asks(
        reading("resistor", Unit.KILOHM, "end resistor of the edge")
            .usually("8.2 kohm")
            .possible(0.1, 1000),
        reading("tolerance", Unit.PERCENT, "its tolerance").usually("5 %").possible(0.1, 50),
        reading("leads", Unit.OHM, "resistance of the leads").usually("1 ohm").possible(0, 1000),
        reading("measured", Unit.KILOHM, "idle reading, edge disconnected")
            .mayBeLeftOut()
            .possible(0, 100000));
    tells(
        number("low", Unit.KILOHM, "lowest that is right").by(Unit.OHM, v -> window(v).low()),
        number("high", Unit.KILOHM, "highest that is right").by(Unit.OHM, v -> window(v).high()),
        number("two-parallel", Unit.KILOHM, "two side by side")
            .by(Unit.OHM, v -> EdgeResistor.parallel(resistor(v), resistor(v)) + v.of("leads")),
        number("two-series", Unit.KILOHM, "two in a row")
            .by(Unit.OHM, v -> 2 * resistor(v) + v.of("leads")),
        number("leak", Unit.KILOHM, "leak across the edge")
            .by(
                Unit.OHM,
                v -> EdgeResistor.leak(resistor(v), v.in("measured", Unit.OHM) - v.of("leads")))
            .when(EdgeCheck::leaks),
        number("extra", Unit.KILOHM, "too much in the wire")
            .by(Unit.OHM, v -> v.in("measured", Unit.OHM) - v.of("leads") - resistor(v))
            .when(v -> v.has("measured") && v.of("measured") > v.of("high")));
    works(
        step("sound-low", Unit.KILOHM).by(Unit.OHM, v -> EdgeResistor.sound(resistor(v)).low()),
        step("sound-high", Unit.KILOHM).by(Unit.OHM, v -> EdgeResistor.sound(resistor(v)).high()));
    formula(
        "R (1 - t) to R (1 + t), and the leads; side by side R/2, in a row 2 R; leak R M/(R - M)"
            + " for a reading M below R, extra M - R above it");
    validity(
        "Direct current, edge disconnected from its switching unit and not pressed. The unit's own"
            + " window may be wider or narrower: its data sheet says.");
    source(
        "Ohm's law; 8.2 kohm published for closed-circuit edges, 10 kohm common practice in North"
            + " America; in service down to 5.4 kohm for 8.2 kohm from an edge data sheet, a tenth"
            + " over by considered judgement");
    lastWord(
        "The edge's and the switching unit's instructions say which resistor belongs there; edges"
            + " are tested after ISO 13856-2, UL 325 or EN 12453.");
    notes(
        Note.warning(
            "A gate whose edge is disconnected or bridged does not feel a person. Crushing. Keep it"
                + " switched off and signed meanwhile, never bridge an edge to make it run, and"
                + " prove the edge before you leave."));
    says("Idle it reads {low} to {high}, pressed near 0, with a broken wire nothing.");
    says(
        when(v -> !v.has("measured")),
        when(
            v -> lies(v, "low", "high"),
            "{measured} is right; press it all along to see that it falls to 0."),
        when(
            v -> isAbout(v, "two-parallel"),
            "Two edges side by side, each with its resistor: wire them in a row with one."),
        when(
            v -> isAbout(v, "two-series"),
            "Two edges in a row, both with a resistor: only the last one may have it."),
        when(
            v -> lies(v, "sound-low", "low"),
            "Still good, as {sound-low} to {sound-high} are in service; but some water or dirt"
                + " leaks across it: dry its ends and look again."),
        when(
            v -> lies(v, "high", "sound-high"),
            "Still good, as {sound-low} to {sound-high} are in service; but a joint in it is no"
                + " longer tight."),
        when(
            v -> v.of("measured") < 0.05 * v.of("low"),
            "It reads as pressed: something leans on it, or its wires touch."),
        when(
            v -> v.of("measured") < v.of("low"),
            "Water or dirt leaks across it; it may read as pressed when it gets wetter."),
        when(
            v -> v.of("measured") > 20 * v.of("high"),
            "The wire is broken, or the resistor is missing."),
        otherwise("A corroded joint, or another resistor than thought."));
  }

  /** The end resistor (ohm). */
  private static double resistor(Values v) {
    return v.in("resistor", Unit.OHM);
  }

  private static Range window(Values v) {
    return EdgeResistor.window(resistor(v), v.fraction("tolerance"), v.of("leads"));
  }

  private static boolean leaks(Values v) {
    return v.has("measured")
        && v.of("measured") < v.of("low")
        && v.in("measured", Unit.OHM) > v.of("leads");
  }

  private static boolean lies(Values v, String from, String to) {
    return v.of("measured") >= v.of(from) && v.of("measured") <= v.of(to);
  }

  private static boolean isAbout(Values v, String expected) {
    return Math.abs(v.of("measured") / v.of(expected) - 1) <= v.fraction("tolerance");
  }
}
