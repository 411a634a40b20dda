package yett.worksheet.leaf;

import yett.calculation.Wind;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** The force of wind on the broad side of the leaf. Source: {@link Wind}. */
final class WindForce extends Worksheet {
  /** Wind speed (m/s) from which nobody works on a leaf: Beaufort 8, gale; common practice. */
  private static final double GALE = 17;

  WindForce() {
    super(Subject.LEAF, "wind-force", "what wind does to the leaf and its drive");
    asks(
        reading("wind", Unit.METRE_PER_SECOND, "speed of the gusts at the gate")
            .possible(0, 80)
            .good(0, 45),
        reading("width", Unit.METRE, "length of the leaf").possible(0.5, 40),
        reading("height", Unit.METRE, "height of the leaf").possible(0.3, 8),
        reading("filled", Unit.PERCENT, "share of its outline that is filled; boards 100 %")
            .usually("30 %")
            .possible(1, 100));
    tells(
        number("across", Unit.NEWTON, "force across the leaf")
            .by(
                v ->
                    Wind.force(v.of("wind"), v.of("width") * v.of("height"), v.fraction("filled"))),
        number("coefficient", Unit.ONE, "force coefficient")
            .by(v -> Wind.coefficient(v.fraction("filled"))),
        number("drive-low", Unit.NEWTON, "drive feels, from")
            .by(v -> Wind.addedDriveForce(v.of("across"), Wind.GUIDE_FRICTION.low())),
        number("drive-high", Unit.NEWTON, "drive feels, to")
            .by(v -> Wind.addedDriveForce(v.of("across"), Wind.GUIDE_FRICTION.high())));
    formula(
        "W = 0.613 V^2 C A s (Pa, m/s, m2), a leaf filled 70 % or more counts as solid (s = 1);"
            + " drive feels k W; V wind speed, C force coefficient, A outline, s filled share, k"
            + " guide friction 0.05 to 0.25");
    validity(
        "Gusts as read at the gate, near sea level, square to the leaf. The wind pushes"
            + " across the travel: guides and posts carry it, the drive feels their friction"
            + " only. This is not a design for storms, which takes more factors.");
    source(
        "ASCE 7 velocity pressure and table 29.4-2 (open frames 2.0, 1.8, 1.6); solid leaf 1.3 from"
            + " memory of ASCE 7; guide friction common practice");
    lastWord(
        "Whether posts, guides and footings bear the wind of the place is for a structural engineer"
            + " and the building code.");
    says(
        "Guides and posts hold {across}; the drive feels {drive-low} with free guide rollers, up to"
            + " {drive-high} with guides that drag.",
        "If that is near what the force setting leaves, the gate reverses in gusts: see"
            + " to the guides, and leave the force where its test has it.");
    says(
        when(v -> v.of("wind") >= GALE)
            .warning(
                Note.warning(
                    "A leaf in a gale is a sail. It can knock over anybody who frees it from its"
                        + " guides. Do not release or lift the leaf in this wind; leave the gate as it"
                        + " stands.")));
  }
}
