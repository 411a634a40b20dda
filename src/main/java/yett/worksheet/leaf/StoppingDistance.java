package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
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

/** How far a leaf goes on after the command to stop: v t + m v²/(2 F). Source: {@link Stopping}. */
final class StoppingDistance extends Worksheet {
  StoppingDistance() {
    super(Subject.LEAF, "stopping-distance", "how far the leaf goes on after it is told to stop");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Leaves.mass(),
        Leaves.speed(),
        Input.reading("braking", Unit.NEWTON, "braking force of the drive")
            .usually("0 N")
            .possible(0, 50_000),
        Input.reading("delay", Unit.SECOND, "time from the command until it brakes")
            .usually("0.1 s")
            .possible(0, 5),
        Input.reading("resistance", Unit.PERCENT, "rolling resistance")
            .usually("2 %")
            .possible(0, 50),
        Input.reading("grade", Unit.PERCENT, "grade in the direction it moves; downhill negative")
            .asSlope()
            .usually("0 %")
            .possible(-30, 30)
            .good(-10, 10));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("distance", Unit.MILLIMETRE, "goes on for"),
        Output.reading("time", Unit.SECOND, "takes"),
        Output.reading("force", Unit.NEWTON, "force that stops it"),
        Output.reading("energy", Unit.JOULE, "energy to take away"));
  }

  @Override
  public String formula() {
    return "x = v t + m v^2/(2 F), T = t + m v/F; F = braking + m g (c cos a + sin a), v speed, t"
        + " delay, m mass, c rolling resistance, tan a = grade";
  }

  @Override
  public String validity() {
    return "A constant force. A chain with slack lets the leaf run on for the slack as well.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS + "; 2 % rolling resistance common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Leaves.DECIDES;
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.MOVING_LEAF);
  }

  private static double force(Entries entries) {
    return entries.in("braking", Unit.NEWTON)
        + Leaf.rollingForce(
            entries.in("mass", Unit.KILOGRAM),
            entries.fraction("resistance"),
            entries.fraction("grade"));
  }

  @Override
  protected Results work(Entries entries) {
    double mass = entries.in("mass", Unit.KILOGRAM);
    double speed = entries.in("speed", Unit.METRE_PER_SECOND);
    double delay = entries.in("delay", Unit.SECOND);
    double force = force(entries);
    Results results =
        new Results()
            .with("force", force, Unit.NEWTON)
            .with("energy", Leaf.kineticEnergy(mass, speed), Unit.JOULE);
    return force > 0
        ? results
            .with("distance", Stopping.distance(mass, speed, force, delay), Unit.METRE)
            .with("time", Stopping.time(mass, speed, force, delay), Unit.SECOND)
        : results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    if (!results.has("distance")) {
      return Meaning.of(
              "It does not stop: on this grade the leaf runs on, and faster. The drive has to brake"
                  + " with more than "
                  + both(
                      entries.in("braking", Unit.NEWTON) - results.in("force", Unit.NEWTON),
                      Unit.NEWTON,
                      Unit.POUND_FORCE)
                  + ".")
          .with(Cautions.RELEASE);
    }
    return Meaning.of(
        "From the command to rest the leaf goes on for "
            + both(results.in("distance", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH)
            + " in "
            + tell(results.in("time", Unit.SECOND), Unit.SECOND)
            + ": a beam, a limit or a stop button has to act that much earlier.",
        "If it coasts clearly further, look at brake, chain slack and grade.");
  }
}
