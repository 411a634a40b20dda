package yett.worksheet.sensing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Conductor;
import yett.calculation.VehicleLoop;
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

/**
 * Inductance, resistance and quality of a vehicle loop with its lead-in. Source: {@link
 * VehicleLoop}.
 */
final class LoopInductance extends Worksheet {
  /** From turn to turn in the slot, insulation included; considered judgement. */
  private static final double PITCH = 0.00381;

  LoopInductance() {
    super(Subject.SENSING, "loop-inductance", "inductance and quality of a vehicle loop");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("long-side", Unit.METRE, "longer side of the loop").possible(0.3, 30),
        Input.reading("short-side", Unit.METRE, "shorter side of the loop").possible(0.3, 30),
        Input.whole("turns", "turns of wire").possible(1, 20).good(1, 6),
        Input.reading("lead-in", Unit.METRE, "length of the twisted lead-in")
            .usually("15 m")
            .possible(0, 500)
            .good(0, 100),
        Input.choice(
                "wire",
                "size of the wire",
                Choice.wire("14 AWG"),
                Choice.wire("16 AWG"),
                Choice.wire("18 AWG"),
                Choice.wire("12 AWG"))
            .usually("awg-14"),
        Input.reading("frequency", Unit.KILOHERTZ, "frequency of the detector")
            .usually("50 kHz")
            .possible(5, 300)
            .good(10, 200),
        Input.reading("measured", Unit.MICROHENRY, "inductance as measured at the detector's end")
            .mayBeLeftOut()
            .possible(0.1, 20000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("loop", Unit.MICROHENRY, "the loop itself"),
        Output.reading("quick", Unit.MICROHENRY, "by the rule of thumb"),
        Output.reading("total", Unit.MICROHENRY, "with its lead-in"),
        Output.reading("seen", Unit.PERCENT, "of a change seen"),
        Output.reading("resistance", Unit.OHM, "resistance of the copper"),
        Output.reading("quality", Unit.ONE, "quality Q of the copper"),
        Output.reading("height", Unit.METRE, "sees undersides up to"),
        Output.reading("clearance", Unit.METRE, "keep from moving steel"),
        Output.reading("deviation", Unit.PERCENT, "measured over expected"));
  }

  @Override
  public String formula() {
    return "N L1(a) + 2 sum (N-k) L1(k p), L1(r) = (mu0/pi) (x ln 2x/r + y ln 2y/r + 2g - x asinh"
        + " x/y - y asinh y/x - 2(x+y)), g2 = x2 + y2; rule P/4 (N2 + N) uH, P in ft;"
        + " lead-in 0.22 uH/ft; seen L/(L + Llead); Q = 2 pi f L/R";
  }

  @Override
  public String validity() {
    return "Thin wire with no steel near; reinforcement and a steel gate lower it. The rule of"
        + " thumb is within 20 % for 2 to 5 turns. Turns are taken 3.8 mm apart. Copper's Q"
        + " is the most there can be: damp and splices take from it.";
  }

  @Override
  public String source() {
    return "inductance of a rectangle, textbook (Grover); rule of thumb, lead-in 0.22 uH/ft and two"
        + " thirds of the shorter side from the loop trade, memory and common practice;"
        + " clearance from a published loop guide; Q of 5 and 5 ohm from a published"
        + " road-agency test; NEC chapter 9 table 8";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The detector's instructions say what inductance it takes and how the loop is laid.");
  }

  @Override
  protected Results work(Entries entries) {
    double x = entries.in("long-side", Unit.METRE);
    double y = entries.in("short-side", Unit.METRE);
    int turns = entries.whole("turns");
    double lead = entries.in("lead-in", Unit.METRE);
    Conductor wire = wire(entries);
    if (!VehicleLoop.hasRoom(x, y, turns, PITCH)) {
      throw new InputException(
          "A loop with sides that short has no room for " + turns + " turns; look at the units.");
    }
    double loop = VehicleLoop.inductance(x, y, turns, radius(wire), PITCH);
    double total = loop + VehicleLoop.leadIn(lead);
    double resistance = (turns * 2 * (x + y) + 2 * lead) * wire.at(20);
    Results results =
        new Results()
            .with("loop", loop, Unit.MICROHENRY)
            .with("quick", VehicleLoop.quickInductance(2 * (x + y), turns), Unit.MICROHENRY)
            .with("total", total, Unit.MICROHENRY)
            .with("seen", 100 * loop / total, Unit.PERCENT)
            .with("resistance", resistance, Unit.OHM)
            .with(
                "quality",
                VehicleLoop.quality(total, resistance, entries.in("frequency", Unit.HERTZ)),
                Unit.ONE)
            .with("height", VehicleLoop.height(x, y), Unit.METRE)
            .with("clearance", VehicleLoop.clearance(x, y), Unit.METRE);
    if (entries.has("measured")) {
      results.with(
          "deviation", 100 * (entries.in("measured", Unit.MICROHENRY) / total - 1), Unit.PERCENT);
    }
    return results;
  }

  private static Conductor wire(Entries entries) {
    String size = entries.choice("wire").words();
    return Conductor.AWG_STRANDED.stream()
        .filter(c -> c.size().equals(size))
        .findFirst()
        .orElseThrow();
  }

  /** m, of solid wire of the gauge: ASTM B258. */
  private static double radius(Conductor wire) {
    int gauge = Integer.parseInt(wire.size().split(" ")[0]);
    return 0.000127 * Math.pow(92, (36 - gauge) / 39.0) / 2;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double total = results.in("total", Unit.MICROHENRY);
    double seen = results.in("seen", Unit.PERCENT) / 100;
    String whole =
        total < VehicleLoop.USUAL.low()
            ? "Few turns: "
                + tell(total, Unit.MICROHENRY)
                + " is little for a detector, add a turn."
            : total > VehicleLoop.TUNES_UP_TO
                ? "At "
                    + tell(total, Unit.MICROHENRY)
                    + " many detectors cannot tune any more; take a turn off."
                : total > VehicleLoop.USUAL.high()
                    ? "At "
                        + tell(total, Unit.MICROHENRY)
                        + " it has more than loops of gates have; if the detector does not tune,"
                        + " take a turn off."
                    : "A detector ought to tune to this loop.";
    String part =
        seen < 0.67
            ? "The lead-in hides a third of what the loop sees or more; shorten it or add a turn."
            : "High beds are seen less: test with the highest vehicle that comes.";
    if (!results.has("deviation")) {
      return Meaning.of(whole, part);
    }
    double deviation = results.in("deviation", Unit.PERCENT);
    return Meaning.of(
        deviation < -30
            ? "Measured far under the figure: turns shorted together, fewer turns than thought, or"
                + " reinforcement close by."
            : deviation > 30
                ? "Measured far over the figure: more turns or a longer lead-in than thought, or a"
                    + " bad splice."
                : "The reading fits a sound loop of this shape.",
        part);
  }
}
