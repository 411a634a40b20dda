package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Doubt;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * What a spring scale says of track and wheels: c = (F/(m g) - sin a)/cos a. Source: {@link Leaf}.
 */
final class ScaleReading extends Worksheet {
  /** What four figures leave of a reading that stands at the limit. */
  private static final double ROUNDED = 1.001;

  private static final Choice UP = new Choice("up", "uphill, or on the level");
  private static final Choice DOWN = new Choice("down", "downhill");

  ScaleReading() {
    super(Subject.LEAF, "scale-reading", "what a spring scale says of track and wheels");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("force", Unit.NEWTON, "highest steady reading at a slow walk")
            .possible(0, 20_000),
        Leaves.mass(),
        Leaves.support(),
        Leaves.grade(),
        Input.choice("direction", "which way it was pulled", UP, DOWN).usually("up"));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("resistance", Unit.PERCENT, "rolling resistance"),
        Output.reading("usual-low", Unit.NEWTON, "usual, from"),
        Output.reading("usual-high", Unit.NEWTON, "usual, to"),
        Output.reading("beyond", Unit.NEWTON, "beyond that"));
  }

  @Override
  public String formula() {
    return "c = (F/(m g) - sin a)/cos a; usual F = m g (c cos a + sin a); F scale, m mass, tan a ="
        + " grade, downhill negative";
  }

  @Override
  public String validity() {
    return "Leaf released from the drive, scale level with the chain and along the travel, slow and"
        + " steady; the start takes more. Do it both ways: half the difference is the grade.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS + "; " + Leaves.RESISTANCE;
  }

  @Override
  public Optional<String> lastWord() {
    return Leaves.DECIDES;
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.RELEASE);
  }

  private static double grade(Entries entries) {
    double grade = entries.fraction("grade");
    return entries.choice("direction").equals(UP) ? grade : -grade;
  }

  @Override
  protected Results work(Entries entries) {
    double mass = entries.in("mass", Unit.KILOGRAM);
    double force = entries.in("force", Unit.NEWTON);
    double grade = grade(entries);
    Range usual = Leaf.usualForce(mass, Leaves.resistance(entries), grade);
    Results results =
        new Results()
            .with("resistance", 100 * Leaf.rollingResistance(mass, force, grade), Unit.PERCENT)
            .with("usual-low", usual.low(), Unit.NEWTON)
            .with("usual-high", usual.high(), Unit.NEWTON);
    if (force > usual.high() * ROUNDED) {
      results.with("beyond", force - usual.high(), Unit.NEWTON);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Range usual = Leaves.resistance(entries);
    return Doubt.said(
        judged(entries, results),
        results,
        "resistance",
        Unit.PERCENT,
        100 * usual.low(),
        100 * usual.high());
  }

  private static Meaning judged(Entries entries, Results results) {
    double c = results.in("resistance", Unit.PERCENT) / 100;
    Range usual = Leaves.resistance(entries);
    String range = percent(usual.low()) + " to " + percent(usual.high());
    if (c < 0) {
      return Meaning.of(
          "So little cannot be: the slope alone takes more. Look at mass, grade and direction, and"
              + " zero the scale.");
    }
    if (c < usual.low()) {
      return Meaning.of(
          "The leaf rolls very easily: " + percent(c) + " of its weight, usual are " + range + ".",
          "Maybe the leaf is lighter than thought, or a slope helps; pull it the other way too.");
    }
    if (results.has("beyond")) {
      return Meaning.of(
          "The leaf drags: "
              + percent(c)
              + " of its weight, usual are "
              + range
              + ". About "
              + both(results.in("beyond", Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE)
              + " come from dirt in the track, wheels, guides or a bent rail.",
          c > 0.06
              ? "So much is no longer rolling: look for a bent rail, a seized wheel or a guide that"
                  + " binds, and do not turn the force up to hide it."
              : "Clean the track, turn each wheel by hand, and see that the guides are free.");
    }
    return Meaning.of(
        "The leaf rolls as it should: " + percent(c) + " of its weight, usual are " + range + ".");
  }
}
