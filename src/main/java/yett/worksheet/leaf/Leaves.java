package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.Range;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Input;
import yett.worksheet.Values;

/** The inputs for the leaf and its support. */
final class Leaves {
  static final String MECHANICS = "mechanics textbooks, standard gravity";
  static final String RESISTANCE =
      "rolling resistance common practice: clean track 1 % to 3 % of the weight, cantilever rollers"
          + " 1 % to 5 %";
  static final String DECIDES =
      "Force limits, entrapment protection and proofs are for UL 325, ASTM F2200 or EN 12453 as"
          + " local law takes them, and for the maker's instructions.";

  private Leaves() {}

  static Input mass() {
    return Input.reading("mass", Unit.KILOGRAM, "mass of the leaf").possible(5, 20_000);
  }

  static Input speed() {
    return Input.reading("speed", Unit.METRE_PER_SECOND, "speed of the leaf")
        .possible(0.01, 3)
        .good(0.01, 1);
  }

  static Input grade() {
    return Input.reading("grade", Unit.PERCENT, "rise over run of the way, without sign")
        .asSlope()
        .usually("0 %")
        .possible(0, 30)
        .good(0, 10);
  }

  static Input support() {
    return Input.choice(
            "support",
            "what carries the leaf",
            new Choice("track", "wheels in a track"),
            new Choice("cantilever", "rollers beside the opening"))
        .usually("track");
  }

  /** Usual rolling resistance of the leaf's support. */
  static Range resistance(Values v) {
    return v.chose("support", "track") ? Leaf.TRACK_RESISTANCE : Leaf.CANTILEVER_RESISTANCE;
  }
}
