package yett.worksheet.earthing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** A measured earth resistance against the figure that the code names. Source: NEC 250.53. */
final class EarthReading extends Worksheet {
  EarthReading() {
    super(Subject.EARTHING, "earth-reading", "a measured rod against the code's figure");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("measured", Unit.OHM, "resistance to earth as measured")
            .possible(0.01, 100000),
        Input.whole("rods", "rods that were joined while measuring").usually("1").possible(1, 24),
        Rod.limit(),
        Input.reading("mains", Unit.VOLT, "mains voltage to earth")
            .usually("120 V")
            .possible(10, 500),
        Input.reading("breaker", Unit.AMPERE, "breaker of the circuit")
            .usually("15 A")
            .possible(1, 400));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("margin", Unit.OHM, "below the figure"),
        Output.text("verdict", "verdict"),
        Output.reading("fault-current", Unit.AMPERE, "fault current by earth"));
  }

  @Override
  public String formula() {
    return "limit - measured; fault current through the earth alone V/R";
  }

  @Override
  public String validity() {
    return "Read by the fall-of-potential method with the rod taken off, in the driest season if it"
        + " is to hold all year. A clamp tester needs a loop through other earths. The"
        + " code's 25 ohm is for a single rod, plate or pipe; with a second one it asks for"
        + " no figure.";
  }

  @Override
  public String source() {
    return "NEC 250.53(A)(2) with its exception (25 ohm); equipment grounding by NEC 250.4(A)(5),"
        + " from memory; Ohm's law";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        Rod.DECIDES + " Other codes name other figures, or a loop impedance instead.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Rod.LIVE_EARTH);
  }

  @Override
  protected Results work(Entries entries) {
    double measured = entries.in("measured", Unit.OHM);
    double margin = entries.in("limit", Unit.OHM) - measured;
    String verdict =
        margin >= 0
            ? "within the figure"
            : entries.whole("rods") == 1 ? "add a second rod" : "above, but supplemented";
    return new Results()
        .with("margin", margin, Unit.OHM)
        .with("verdict", verdict)
        .with("fault-current", entries.in("mains", Unit.VOLT) / measured, Unit.AMPERE);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double margin = results.in("margin", Unit.OHM);
    double u = results.uncertainty("margin", Unit.OHM);
    double fault = results.in("fault-current", Unit.AMPERE);
    double breaker = entries.in("breaker", Unit.AMPERE);
    String rods =
        margin >= 0
            ? "The figure is met."
            : entries.whole("rods") == 1
                ? "A single rod above the figure needs a second one, six feet (1.8 m) away or more."
                : "With more than one rod the code asks for no figure; lower is better for surges.";
    if (u > 0 && Math.abs(margin) < 2 * u) {
      rods += " The reading's own doubt reaches across the figure.";
    }
    String earth =
        "Through the earth alone a fault would draw "
            + tell(fault, Unit.AMPERE)
            + (fault < 5 * breaker
                ? ", too little to trip a breaker of "
                    + tell(breaker, Unit.AMPERE)
                    + " at once: the protective conductor to the panel has to be there."
                : ".");
    return Meaning.of(rods, earth);
  }
}
