package yett.worksheet.sensing;

import yett.calculation.VehicleLoop;
import yett.quantity.Unit;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Turns that a loop needs for an inductance. Source: {@link VehicleLoop}. */
final class LoopTurns extends Worksheet {
  /** Radius (m) of 14 AWG. */
  private static final double RADIUS = 0.000814;

  LoopTurns() {
    super(Subject.SENSING, "loop-turns", "turns of wire for a vehicle loop");
    asks(
        reading("long-side", Unit.METRE, "longer side of the loop").possible(0.3, 30),
        reading("short-side", Unit.METRE, "shorter side of the loop").possible(0.3, 30),
        reading("wanted", Unit.MICROHENRY, "least inductance wanted")
            .usually("60 uH")
            .possible(10, 1000));
    tells(
        number("perimeter", Unit.METRE, "perimeter")
            .by(v -> 2 * (v.of("long-side") + v.of("short-side"))),
        number("turns", Unit.ONE, "turns needed")
            .by(v -> v.of("laid"))
            .when(v -> inductance(v, v.whole("laid")) >= v.of("wanted")),
        number("inductance", Unit.MICROHENRY, "inductance with them")
            .by(v -> inductance(v, v.whole("laid")))
            .given("turns"),
        number("wire", Unit.METRE, "wire for the loop")
            .by(v -> v.of("turns") * v.of("perimeter"))
            .given("turns"),
        text("rule", "by the rule of thumb").by(v -> rule(v.in("perimeter", Unit.FOOT))));
    works(
        step("laid", Unit.ONE).by(LoopTurns::laid),
        phrase("count").by(v -> NumberWords.count(v.of("turns"), "turns")));
    formula(
        "the fewest turns whose inductance (loop-inductance, 14 AWG, 3.8 mm from turn to turn)"
            + " reaches what is wanted; rule of thumb: perimeter 10 to 13 ft 4 turns, 14 to 26 ft"
            + " 3, 27 to 80 ft 2");
    validity(
        "No steel near. Over reinforcement add a turn. Two loops side by side on one"
            + " detector: other turns for the one than for the other, or they interfere with"
            + " each other.");
    source(
        "inductance of a rectangle, textbook (Grover); 60 to 100 uH is a published window of one"
            + " road agency; rule of thumb and the extra turn from common practice");
    lastWord("The detector's instructions take precedence; their turns tables differ.");
    says(
        when(
            v -> !v.has("turns"),
            "So small a loop cannot reach that with the turns it has room for; make it larger."),
        otherwise(
            "Lay {count}, all in one direction, {wire} of wire beside the lead-in, which is twisted"
                + " up to the detector."));
  }

  private static double inductance(Values v, int turns) {
    return VehicleLoop.inductance(
        v.of("long-side"), v.of("short-side"), turns, RADIUS, LoopInductance.PITCH);
  }

  /** The fewest turns that reach the wanted inductance, or as many as there is room for. */
  private static int laid(Values v) {
    int turns = 1;
    while (turns < 20
        && VehicleLoop.hasRoom(
            v.of("long-side"), v.of("short-side"), turns + 1, LoopInductance.PITCH)
        && inductance(v, turns) < v.of("wanted")) {
      turns++;
    }
    return turns;
  }

  private static String rule(double feet) {
    if (feet < 10 || feet > 80) {
      return "outside it";
    }
    return feet < 13.5 ? "4 turns" : feet < 26.5 ? "3 turns" : "2 turns";
  }
}
