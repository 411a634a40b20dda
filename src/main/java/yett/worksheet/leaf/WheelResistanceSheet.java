package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.WheelResistance;
import yett.calculation.WheelResistance.Bearing;
import yett.calculation.WheelResistance.Tread;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Rolling resistance of the leaf from its wheels. Source: {@link WheelResistance}. */
final class WheelResistanceSheet extends Worksheet {
  WheelResistanceSheet() {
    super(Subject.LEAF, "wheel-resistance", "rolling resistance from the wheels");
    asks(
        reading("wheel", Unit.MILLIMETRE, "diameter of the wheels where they roll")
            .possible(20, 1000),
        reading("axle", Unit.MILLIMETRE, "diameter of axle or pin").possible(3, 200),
        choice(
                "tread",
                "what rolls on what",
                new Choice("steel-on-steel", "steel wheel on steel rail"),
                new Choice("polymer-on-steel", "polymer wheel on steel rail"),
                new Choice("polymer-on-concrete", "polymer wheel on concrete"))
            .usually("steel-on-steel"),
        choice(
                "bearing",
                "what the wheels turn on",
                new Choice("rolling", "ball or roller bearings"),
                new Choice("plain", "bush on a pin"))
            .usually("rolling"),
        Leaves.mass().mayBeLeftOut());
    refuses(
        v -> v.of("axle") >= v.of("wheel"),
        "The axle is as thick as the wheel. Look at the units: both are diameters.");
    tells(
        number("resistance", Unit.PERCENT, "rolling resistance")
            .by(
                v ->
                    100
                        * WheelResistance.coefficient(
                            v.metres("wheel"),
                            v.metres("axle"),
                            v.choice("tread", Tread.class),
                            v.choice("bearing", Bearing.class))),
        number("force", Unit.NEWTON, "keeps it rolling, level")
            .by(v -> Leaf.rollingForce(v.of("mass"), v.fraction("resistance"), 0))
            .given("mass"));
    works(
        step("runs-from", Unit.PERCENT)
            .by(v -> 100 * Leaf.selfMovingGrade(v.fraction("resistance"))));
    formula(
        "c = (2/D)(k d/2 + f) + e; D wheel, d axle, k bearing friction 0.005 rolling, 0.09 plain, f"
            + " lever arm 0.02 in steel, 0.08 in polymer on steel, 0.2 in on concrete, e flange"
            + " 0.003 rolling, 0.005 plain; F = c m g");
    validity(
        "New wheels on a clean, straight, level track. Dirt, flat spots, rust in a bearing or a"
            + " bent rail come on top: gates in service have 1 % to 3 % on wheels in a track.");
    source(
        "travel resistance of crane and drive handbooks, formula from memory; coefficients of a"
            + " table of drive engineering, units taken as inches");
    says(
        "Sound wheels of this kind resist with {resistance} of the weight; a spring scale"
            + " that shows much more points to dirt, flat spots or a dragging guide"
            + " (scale-reading).",
        "On a grade steeper than {runs-from} the released leaf runs by itself.");
    says(when(v -> v.has("force"), "On the level this leaf rolls on {force}."));
  }
}
