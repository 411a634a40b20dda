package yett.worksheet.sensing;

import static yett.worksheet.Tell.count;
import static yett.worksheet.Tell.metres;

import java.util.List;
import java.util.Optional;
import yett.calculation.VehicleLoop;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Turns that a loop needs for an inductance. Source: {@link VehicleLoop}. */
final class LoopTurns extends Worksheet {
  private static final double PITCH = 0.00381;
  private static final double RADIUS = 0.000814;

  LoopTurns() {
    super(Subject.SENSING, "loop-turns", "turns of wire for a vehicle loop");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("long-side", Unit.METRE, "longer side of the loop").possible(0.3, 30),
        Input.reading("short-side", Unit.METRE, "shorter side of the loop").possible(0.3, 30),
        Input.reading("wanted", Unit.MICROHENRY, "least inductance wanted")
            .usually("60 uH")
            .possible(10, 1000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("perimeter", Unit.METRE, "perimeter"),
        Output.reading("turns", Unit.ONE, "turns needed"),
        Output.reading("inductance", Unit.MICROHENRY, "inductance with them"),
        Output.reading("wire", Unit.METRE, "wire for the loop"),
        Output.text("rule", "by the rule of thumb"));
  }

  @Override
  public String formula() {
    return "the fewest turns whose inductance (loop-inductance, 14 AWG, 3.8 mm from turn to turn)"
        + " reaches what is wanted; rule of thumb: perimeter 10 to 13 ft 4 turns, 14 to 26"
        + " ft 3, 27 to 80 ft 2";
  }

  @Override
  public String validity() {
    return "No steel near. Over reinforcement add a turn. Two loops side by side on one detector:"
        + " other turns for the one than for the other, or they talk to each other.";
  }

  @Override
  public String source() {
    return "inductance of a rectangle, textbook (Grover); 60 to 100 uH is a published window of one"
        + " road agency; rule of thumb and the extra turn from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of("The detector's instructions go first; their turns tables differ.");
  }

  @Override
  protected Results work(Entries entries) {
    double x = entries.in("long-side", Unit.METRE);
    double y = entries.in("short-side", Unit.METRE);
    double wanted = entries.in("wanted", Unit.MICROHENRY);
    double perimeter = 2 * (x + y);
    int turns = 1;
    while (turns < 20
        && VehicleLoop.hasRoom(x, y, turns + 1, PITCH)
        && VehicleLoop.inductance(x, y, turns, RADIUS, PITCH) < wanted) {
      turns++;
    }
    double inductance = VehicleLoop.inductance(x, y, turns, RADIUS, PITCH);
    Results results =
        new Results()
            .with("perimeter", perimeter, Unit.METRE)
            .with("rule", rule(perimeter / 0.3048));
    if (inductance >= wanted) {
      results
          .with("turns", turns, Unit.ONE)
          .with("inductance", inductance, Unit.MICROHENRY)
          .with("wire", turns * perimeter, Unit.METRE);
    }
    return results;
  }

  private static String rule(double feet) {
    if (feet < 10 || feet > 80) {
      return "outside it";
    }
    return feet < 13.5 ? "4 turns" : feet < 26.5 ? "3 turns" : "2 turns";
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    if (!results.has("turns")) {
      return Meaning.of(
          "So small a loop does not get there with the turns that it has room for; make it"
              + " larger.");
    }
    return Meaning.of(
        "Lay "
            + count(results.in("turns", Unit.ONE), "turns")
            + ", all in one direction, "
            + metres(results.in("wire", Unit.METRE))
            + " of wire beside the lead-in, which is twisted up to the detector.");
  }
}
