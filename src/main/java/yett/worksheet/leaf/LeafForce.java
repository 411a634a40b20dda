package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.range;

import java.util.List;
import java.util.Optional;
import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.calculation.Wind;
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

/**
 * Force that moves a leaf: F = m g (c cos a + sin a), and the friction of the guides under wind.
 * Source: {@link Leaf}, {@link Wind}.
 */
final class LeafForce extends Worksheet {
  LeafForce() {
    super(Subject.LEAF, "leaf-force", "force that moves the leaf: wheels, grade, wind");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Leaves.mass(),
        Leaves.support(),
        Leaves.grade(),
        Input.reading(
                "resistance",
                Unit.PERCENT,
                "rolling resistance, if it is known (wheel-resistance, scale-reading)")
            .possible(0, 50)
            .good(0, 10)
            .mayBeLeftOut(),
        Input.reading("wind", Unit.NEWTON, "wind across the leaf (wind-force tells it)")
            .possible(0, 200_000)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("up-low", Unit.NEWTON, "uphill, from"),
        Output.reading("up-high", Unit.NEWTON, "uphill, to"),
        Output.reading("down-low", Unit.NEWTON, "downhill, from"),
        Output.reading("down-high", Unit.NEWTON, "downhill, to"),
        Output.reading("start", Unit.NEWTON, "to start it, up to"),
        Output.reading("wind-low", Unit.NEWTON, "wind adds, from"),
        Output.reading("wind-high", Unit.NEWTON, "wind adds, to"));
  }

  @Override
  public String formula() {
    return "F = m g (c cos a + sin a), tan a = grade; start up to m g (2.5 c cos a + sin a); wind adds k"
        + " W; m mass, c"
        + " rolling resistance, k guide friction 0.05 to 0.25, W wind across the leaf";
  }

  @Override
  public String validity() {
    return "A leaf that rolls: straight track, sound wheels, guides that do not bind. A negative"
        + " force downhill means that the leaf runs by itself. Snow, ice and a bent rail are not in"
        + " it.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS
        + "; "
        + Leaves.RESISTANCE
        + "; start against 1.5 to 2.5 times that resistance and guide friction common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Leaves.DECIDES;
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.RELEASE);
  }

  private static Range resistance(Entries entries) {
    if (!entries.has("resistance")) {
      return Leaves.resistance(entries);
    }
    double known = entries.fraction("resistance");
    return new Range(known, known);
  }

  @Override
  protected Results work(Entries entries) {
    double mass = entries.in("mass", Unit.KILOGRAM);
    double grade = entries.fraction("grade");
    Range up = Leaf.usualForce(mass, resistance(entries), grade);
    Range down = Leaf.usualForce(mass, resistance(entries), -grade);
    Results results =
        new Results()
            .with("up-low", up.low(), Unit.NEWTON)
            .with("up-high", up.high(), Unit.NEWTON)
            .with(
                "start", Leaf.breakawayForce(mass, resistance(entries), grade).high(), Unit.NEWTON);
    if (grade > 0) {
      results.with("down-low", down.low(), Unit.NEWTON).with("down-high", down.high(), Unit.NEWTON);
    }
    if (entries.has("wind")) {
      double wind = entries.in("wind", Unit.NEWTON);
      results
          .with("wind-low", Wind.addedDriveForce(wind, Wind.GUIDE_FRICTION.low()), Unit.NEWTON)
          .with("wind-high", Wind.addedDriveForce(wind, Wind.GUIDE_FRICTION.high()), Unit.NEWTON);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Meaning meaning =
        Meaning.of(
            "A spring scale that pulls the released leaf at a slow walk should show "
                + range(told(results, "up-low"), told(results, "up-high"))
                + (entries.fraction("grade") > 0 ? " uphill" : "")
                + ", and up to "
                + told(results, "start")
                + " to start it; more speaks for track, wheels or guides.");
    if (results.has("wind-high")) {
      meaning =
          meaning.and(
              "In that wind the drive needs "
                  + range(told(results, "wind-low"), told(results, "wind-high"))
                  + " more, and may take the wind for an obstruction.");
    }
    return entries.fraction("grade") > resistance(entries).low()
        ? meaning.and(
            "On a grade of "
                + percent(entries.fraction("grade"))
                + " the leaf can run downhill by itself (leaf-released).")
        : meaning;
  }

  private static String told(Results results, String id) {
    return both(results.in(id, Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE);
  }
}
