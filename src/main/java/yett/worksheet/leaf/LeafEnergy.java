package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import yett.calculation.ForceZone;
import yett.calculation.Leaf;
import yett.calculation.Stopping;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Energy of a moving leaf and the force it meets an obstruction with. Source: {@link Stopping}. */
final class LeafEnergy extends Worksheet {
  /** N/m of the meter of EN 12453. */
  private static final double METER = 500_000;

  LeafEnergy() {
    super(Subject.LEAF, "leaf-energy", "energy of the moving leaf, and how hard it hits");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Leaves.mass(),
        Leaves.speed(),
        Input.reading("give", Unit.MILLIMETRE, "how far edge and obstruction give way")
            .usually("50 mm")
            .possible(1, 1000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("energy", Unit.JOULE, "kinetic energy"),
        Output.reading("mean-force", Unit.NEWTON, "mean force"),
        Output.reading("hard-peak", Unit.NEWTON, "peak on a hard thing"),
        Output.reading("speed-400", Unit.METRE_PER_SECOND, "400 N from a speed of"));
  }

  @Override
  public String formula() {
    return "E = m v^2/2; mean force E/x; peak v sqrt(k m) with k = 500 N/mm; speed for 400 N:"
        + " 400/sqrt(k m); m mass, v speed, x way that edge and obstruction give";
  }

  @Override
  public String validity() {
    return "The drive switched off and nothing of it pushing on, which is the best case. The peak is"
        + " that of the meter's stiffness; a person is softer, a post is harder.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS
        + "; stiffness of the meter: EN 12453 (text of 2001); 400 N: summaries of EN 12453";
  }

  @Override
  public Optional<String> lastWord() {
    return Leaves.DECIDES;
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.NEVER_A_BODY);
  }

  @Override
  protected Results work(Entries entries) {
    double mass = entries.in("mass", Unit.KILOGRAM);
    double speed = entries.in("speed", Unit.METRE_PER_SECOND);
    return new Results()
        .with("energy", Leaf.kineticEnergy(mass, speed), Unit.JOULE)
        .with(
            "mean-force",
            Stopping.meanForce(mass, speed, entries.in("give", Unit.METRE)),
            Unit.NEWTON)
        .with("hard-peak", Stopping.peakForce(mass, speed, METER), Unit.NEWTON)
        .with(
            "speed-400",
            ForceZone.CLOSING_GAP.peakLimit() / Stopping.peakForce(mass, 1, METER),
            Unit.METRE_PER_SECOND);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double mean = results.in("mean-force", Unit.NEWTON);
    double limit = ForceZone.CLOSING_GAP.peakLimit();
    return Meaning.of(
        "Stopped within "
            + both(entries.in("give", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH)
            + " the leaf pushes with "
            + both(mean, Unit.NEWTON, Unit.POUND_FORCE)
            + " on average"
            + (mean > limit
                ? ", already more than the "
                    + both(limit, Unit.NEWTON, Unit.POUND_FORCE)
                    + " of a closing gap: it needs a softer edge, less"
                    + " speed before the post, or a way to see people before it touches them."
                : "; the peak is higher, and only a measured curve tells it (obstruction-force)."),
        "The energy grows with the square of the speed: half the speed is a quarter of it.");
  }
}
