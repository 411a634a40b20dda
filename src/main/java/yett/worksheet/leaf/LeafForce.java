package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.calculation.Wind;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.NumberWords;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Force that moves a leaf: F = m g (c cos a + sin a), and the friction of the guides under wind.
 * Source: {@link Leaf}, {@link Wind}.
 */
final class LeafForce extends Worksheet {
  LeafForce() {
    super(Subject.LEAF, "leaf-force", "force that moves the leaf: wheels, grade, wind");
    asks(
        Leaves.mass(),
        Leaves.support(),
        Leaves.grade(),
        reading(
                "resistance",
                Unit.PERCENT,
                "rolling resistance, if it is known (wheel-resistance, scale-reading)")
            .possible(0, 50)
            .good(0, 10)
            .mayBeLeftOut(),
        reading("wind", Unit.NEWTON, "wind across the leaf (from wind-force)")
            .possible(0, 200_000)
            .mayBeLeftOut());
    tells(
        number("up-low", Unit.NEWTON, "uphill, from").by(v -> usual(v, 1).low()),
        number("up-high", Unit.NEWTON, "uphill, to").by(v -> usual(v, 1).high()),
        number("down-low", Unit.NEWTON, "downhill, from")
            .by(v -> usual(v, -1).low())
            .when(v -> v.of("grade") > 0),
        number("down-high", Unit.NEWTON, "downhill, to")
            .by(v -> usual(v, -1).high())
            .when(v -> v.of("grade") > 0),
        number("start", Unit.NEWTON, "to start it, up to")
            .by(v -> Leaf.breakawayForce(v.of("mass"), resistance(v), v.fraction("grade")).high()),
        number("wind-low", Unit.NEWTON, "wind adds, from")
            .by(v -> Wind.addedDriveForce(v.of("wind"), Wind.GUIDE_FRICTION.low()))
            .given("wind"),
        number("wind-high", Unit.NEWTON, "wind adds, to")
            .by(v -> Wind.addedDriveForce(v.of("wind"), Wind.GUIDE_FRICTION.high()))
            .given("wind"));
    works(
        phrase("push")
            .by(
                v ->
                    NumberWords.range(v.text("up-low"), v.text("up-high"))
                        + (v.of("grade") > 0 ? " uphill" : "")),
        phrase("gust").by(v -> NumberWords.range(v.text("wind-low"), v.text("wind-high"))));
    formula(
        "F = m g (c cos a + sin a), tan a = grade; start up to m g (2.5 c cos a + sin a); wind adds"
            + " k W; m mass, c rolling resistance, k guide friction 0.05 to 0.25, W wind across the"
            + " leaf");
    validity(
        "A leaf that rolls: straight track, sound wheels, guides that do not bind. A negative force"
            + " downhill means that the leaf runs by itself. Snow, ice and a bent rail are not in"
            + " it.");
    source(
        Leaves.MECHANICS
            + "; "
            + Leaves.RESISTANCE
            + "; start against 1.5 to 2.5 times that resistance and guide friction common"
            + " practice");
    lastWord(Leaves.DECIDES);
    notes(Cautions.RELEASE);
    says(
        "A spring scale that pulls the released leaf at a slow walk should show {push},"
            + " and up to {start} to start it; more points to track, wheels or guides.");
    says(
        when(
            v -> v.has("wind"),
            "In that wind the drive needs {gust} more, and may take the wind for an obstruction."));
    says(
        when(
            v -> v.fraction("grade") > resistance(v).low(),
            "On a grade of {grade} the leaf can run downhill by itself (leaf-released)."));
  }

  private static Range resistance(Values v) {
    return v.has("resistance")
        ? new Range(v.fraction("resistance"), v.fraction("resistance"))
        : Leaves.resistance(v);
  }

  /**
   * Usual force (N).
   *
   * @param way 1 uphill, -1 downhill
   */
  private static Range usual(Values v, int way) {
    return Leaf.usualForce(v.of("mass"), resistance(v), way * v.fraction("grade"));
  }
}
