package yett.worksheet.leaf;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Leaf;
import yett.calculation.Range;
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

/** Motor current to expect for a force: I = I0 + F v/(η V). Source: {@link Leaf}. */
final class MotorCurrent extends Worksheet {
  MotorCurrent() {
    super(Subject.LEAF, "motor-current", "motor current to expect for a force");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("force", Unit.NEWTON, "spring-scale reading, or leaf-force")
            .possible(0, 20_000),
        Leaves.speed(),
        Input.reading("voltage", Unit.VOLT, "voltage at the motor while it runs")
            .usually("24 V")
            .possible(6, 120),
        Input.reading("measured", Unit.AMPERE, "current read while it runs at that speed")
            .possible(0, 200)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("low", Unit.AMPERE, "to expect, from"),
        Output.reading("high", Unit.AMPERE, "to expect, to"),
        Output.reading("alone-low", Unit.AMPERE, "of it motor alone, from"),
        Output.reading("alone-high", Unit.AMPERE, "of it motor alone, to"),
        Output.reading("power", Unit.WATT, "power that moves it"));
  }

  @Override
  public String formula() {
    return "I = I0 + F v/(e V); I0 1.5 A to 2.5 A for the motor itself, F force, v speed, e"
        + " efficiency 0.6 to 0.35, V voltage; P = F v";
  }

  @Override
  public String validity() {
    return "A 24 V permanent-magnet gear motor of a gate, at steady speed. At the start it takes"
        + " several times as much. A controller that switches the motor quickly takes less from the"
        + " battery than flows in the motor: clamp a motor lead.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS + "; no-load current and efficiency common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of("The motor's data sheet or the gate's own reading when new goes first.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.MOVING_LEAF);
  }

  @Override
  protected Results work(Entries entries) {
    double force = entries.in("force", Unit.NEWTON);
    double speed = entries.in("speed", Unit.METRE_PER_SECOND);
    Range current =
        Leaf.usualCurrent(new Range(force, force), speed, entries.in("voltage", Unit.VOLT));
    return new Results()
        .with("low", current.low(), Unit.AMPERE)
        .with("high", current.high(), Unit.AMPERE)
        .with("alone-low", Leaf.IDLE_CURRENT.low(), Unit.AMPERE)
        .with("alone-high", Leaf.IDLE_CURRENT.high(), Unit.AMPERE)
        .with("power", force * speed, Unit.WATT);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    String range =
        tell(results.in("low", Unit.AMPERE), Unit.AMPERE)
            + " to "
            + tell(results.in("high", Unit.AMPERE), Unit.AMPERE);
    if (!entries.has("measured")) {
      return Meaning.of(
          "Expect "
              + range
              + " in a motor lead; note the reading as the gate's own for next time.");
    }
    double measured = entries.in("measured", Unit.AMPERE);
    String read = tell(measured, Unit.AMPERE);
    if (measured > results.in("high", Unit.AMPERE)) {
      return Meaning.of(
          read + " is more than the " + range + " that this force explains.",
          "The leaf is not the cause then: look at gearbox, brake, sprocket bearings and a chain"
              + " that is too tight, and at the motor itself.");
    }
    return measured < results.in("low", Unit.AMPERE)
        ? Meaning.of(
            read + " is less than the " + range + " to expect.",
            "Maybe the clamp sat on a battery lead, was not set to zero, or the speed or force was"
                + " less than given.")
        : Meaning.of(
            read + " fits the force: " + range + " are to expect.",
            "Drive and leaf agree; if the current is still too much for the gate, the leaf is what"
                + " to work on.");
  }
}
