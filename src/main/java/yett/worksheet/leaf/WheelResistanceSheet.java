package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.percent;

import java.util.List;
import java.util.Optional;
import yett.calculation.Leaf;
import yett.calculation.WheelResistance;
import yett.calculation.WheelResistance.Bearing;
import yett.calculation.WheelResistance.Tread;
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

/** Rolling resistance of the leaf from its wheels. Source: {@link WheelResistance}. */
final class WheelResistanceSheet extends Worksheet {
  private static final Choice STEEL = new Choice("steel-on-steel", "steel wheel on steel rail");
  private static final Choice POLYMER =
      new Choice("polymer-on-steel", "polymer wheel on steel rail");
  private static final Choice CONCRETE =
      new Choice("polymer-on-concrete", "polymer wheel on concrete");
  private static final Choice ROLLING = new Choice("rolling", "ball or roller bearings");
  private static final Choice PLAIN = new Choice("plain", "bush on a pin");

  WheelResistanceSheet() {
    super(Subject.LEAF, "wheel-resistance", "rolling resistance from the wheels");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("wheel", Unit.MILLIMETRE, "diameter of the wheels where they roll")
            .possible(20, 1000),
        Input.reading("axle", Unit.MILLIMETRE, "diameter of axle or pin").possible(3, 200),
        Input.choice("tread", "what rolls on what", STEEL, POLYMER, CONCRETE).usually(STEEL.id()),
        Input.choice("bearing", "what the wheels turn on", ROLLING, PLAIN).usually(ROLLING.id()),
        Input.reading("mass", Unit.KILOGRAM, "mass of the leaf")
            .possible(5, 20_000)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("resistance", Unit.PERCENT, "rolling resistance"),
        Output.reading("force", Unit.NEWTON, "keeps it rolling, level"));
  }

  @Override
  public String formula() {
    return "c = (2/D)(k d/2 + f) + e; D wheel, d axle, k bearing friction 0.005 rolling, 0.09 plain,"
        + " f lever arm 0.02 in steel, 0.08 in polymer on steel, 0.2 in on concrete, e flange 0.003"
        + " rolling, 0.005 plain; F = c m g";
  }

  @Override
  public String validity() {
    return "New wheels on a clean, straight, level track. Dirt, flat spots, rust in a bearing or a"
        + " bent rail come on top: gates in service have 1 % to 3 % on wheels in a track.";
  }

  @Override
  public String source() {
    return "travel resistance of crane and drive handbooks, formula from memory; coefficients of a"
        + " table of drive engineering, units taken as inches";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.empty();
  }

  @Override
  protected Results work(Entries entries) {
    if (entries.in("axle", Unit.METRE) >= entries.in("wheel", Unit.METRE)) {
      throw new InputException(
          "The axle is as thick as the wheel. Look at the units: both are diameters.");
    }
    double c =
        WheelResistance.coefficient(
            entries.in("wheel", Unit.METRE),
            entries.in("axle", Unit.METRE),
            tread(entries.choice("tread")),
            entries.choice("bearing").equals(PLAIN) ? Bearing.PLAIN : Bearing.ROLLING);
    Results results = new Results().with("resistance", 100 * c, Unit.PERCENT);
    if (entries.has("mass")) {
      results.with(
          "force", Leaf.rollingForce(entries.in("mass", Unit.KILOGRAM), c, 0), Unit.NEWTON);
    }
    return results;
  }

  private static Tread tread(Choice choice) {
    if (choice.equals(STEEL)) {
      return Tread.STEEL_ON_STEEL;
    }
    return choice.equals(POLYMER) ? Tread.POLYMER_ON_STEEL : Tread.POLYMER_ON_CONCRETE;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double c = results.in("resistance", Unit.PERCENT) / 100;
    Meaning meaning =
        Meaning.of(
            "Sound wheels of this kind resist with "
                + percent(c)
                + " of the weight; a spring scale that shows much more speaks for dirt, flat spots"
                + " or a dragging guide (scale-reading).",
            "On a grade steeper than "
                + percent(Leaf.selfMovingGrade(c))
                + " the released leaf runs by itself.");
    return results.has("force")
        ? meaning.and(
            "On the level this leaf rolls on "
                + both(results.in("force", Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE)
                + ".")
        : meaning;
  }
}
