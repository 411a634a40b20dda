package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.metres;
import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Leaf;
import yett.calculation.ReleasedLeaf;
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

/** What a grade does to a leaf that is released from its drive. Source: {@link ReleasedLeaf}. */
final class LeafReleased extends Worksheet {
  LeafReleased() {
    super(Subject.LEAF, "leaf-released", "what a grade does when the leaf is released");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("grade", Unit.PERCENT, "rise over run of the way, without sign")
            .asSlope()
            .possible(0, 30),
        Leaves.mass(),
        Input.reading(
                "resistance", Unit.PERCENT, "rolling resistance; the lowest it may have is safe")
            .usually("1 %")
            .possible(0, 50),
        Input.reading("way", Unit.METRE, "how far it can run").usually("5 m").possible(0.1, 50));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("acceleration", Unit.METRE_PER_SECOND_SQUARED, "acceleration"),
        Output.reading("speed", Unit.METRE_PER_SECOND, "speed at the end"),
        Output.reading("time", Unit.SECOND, "time until then"),
        Output.reading("energy", Unit.JOULE, "energy at the end"),
        Output.reading("holding", Unit.NEWTON, "force that holds it"),
        Output.reading("edge", Unit.PERCENT, "runs from a grade of"));
  }

  @Override
  public String formula() {
    return "a = g (sin b - c cos b), 0 if negative, tan b = grade; v = sqrt(2 a s), t = sqrt(2 s/a);"
        + " hold m a; c rolling resistance, s way, m mass";
  }

  @Override
  public String validity() {
    return "A straight grade over the whole way. At rest a leaf sticks a little more than it rolls:"
        + " it may stand still and run away at a touch or a gust.";
  }

  @Override
  public String source() {
    return Leaves.MECHANICS
        + ", inclined plane; 1 % for sound wheels on a clean track common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "ASTM F2200 wants no motion by gravity when the operator is disconnected; a gate that runs"
            + " by itself is put right, not lived with.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.RELEASE);
  }

  @Override
  protected Results work(Entries entries) {
    double grade = entries.fraction("grade");
    double c = entries.fraction("resistance");
    double mass = entries.in("mass", Unit.KILOGRAM);
    double way = entries.in("way", Unit.METRE);
    double speed = ReleasedLeaf.speedAfter(way, c, grade);
    Results results =
        new Results()
            .with(
                "acceleration", ReleasedLeaf.acceleration(c, grade), Unit.METRE_PER_SECOND_SQUARED)
            .with("speed", speed, Unit.METRE_PER_SECOND)
            .with("energy", Leaf.kineticEnergy(mass, speed), Unit.JOULE)
            .with("holding", ReleasedLeaf.holdingForce(mass, c, grade), Unit.NEWTON)
            .with("edge", 100 * Leaf.selfMovingGrade(c), Unit.PERCENT);
    if (speed > 0) {
      results.with("time", ReleasedLeaf.timeFor(way, c, grade), Unit.SECOND);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double grade = entries.fraction("grade");
    if (!results.has("time")) {
      boolean near = grade > 0.5 * Leaf.selfMovingGrade(entries.fraction("resistance"));
      return Meaning.of(
          "Released on "
              + percent(grade)
              + " the leaf stays where it is; it would run from "
              + percent(results.in("edge", Unit.PERCENT) / 100)
              + " on.",
          near
              ? "That is near: a push or a gust moves it a long way. Chock it all the same."
              : "Keep a hand on it all the same: wind and people move it easily.");
    }
    return Meaning.of(
            "The released leaf runs downhill: after "
                + metres(entries.in("way", Unit.METRE))
                + ", "
                + tell(results.in("time", Unit.SECOND), Unit.SECOND)
                + " later, it has "
                + both(
                    results.in("speed", Unit.METRE_PER_SECOND),
                    Unit.METRE_PER_SECOND,
                    Unit.FOOT_PER_SECOND)
                + " and "
                + both(results.in("energy", Unit.JOULE), Unit.JOULE, Unit.FOOT_POUND)
                + ", where a driven leaf of 0.3 m/s has "
                + both(
                    Leaf.kineticEnergy(entries.in("mass", Unit.KILOGRAM), 0.3),
                    Unit.JOULE,
                    Unit.FOOT_POUND)
                + ".",
            "While it stands, "
                + both(results.in("holding", Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE)
                + " hold it; once it runs, nobody stops it by hand.")
        .with(
            Note.danger(
                "The leaf will run away when the drive or the chain lets go. Death of whoever is"
                    + " in its way. Chock it on the downhill side and tie it back before anything"
                    + " is released, and keep everybody off that side."));
  }
}
