package yett.worksheet.leaf;

import yett.calculation.ForceZone;
import yett.calculation.Leaf;
import yett.calculation.Stopping;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Energy of a moving leaf and its force on an obstruction. Source: {@link Stopping}. */
final class LeafEnergy extends Worksheet {
  /** Stiffness (N/m) of the meter of EN 12453. */
  private static final double METER = 500_000;

  LeafEnergy() {
    super(Subject.LEAF, "leaf-energy", "energy of the moving leaf, and how hard it hits");
    asks(
        Leaves.mass(),
        Leaves.speed(),
        reading("give", Unit.MILLIMETRE, "how far edge and obstruction give way")
            .usually("50 mm")
            .possible(1, 1000));
    tells(
        number("energy", Unit.JOULE, "kinetic energy")
            .by(v -> Leaf.kineticEnergy(v.of("mass"), v.of("speed"))),
        number("mean-force", Unit.NEWTON, "mean force")
            .by(v -> Stopping.meanForce(v.of("mass"), v.of("speed"), v.metres("give"))),
        number("hard-peak", Unit.NEWTON, "peak on something hard")
            .by(v -> Stopping.peakForce(v.of("mass"), v.of("speed"), METER)),
        number("speed-400", Unit.METRE_PER_SECOND, "400 N from a speed of")
            .by(v -> v.of("limit") / Stopping.peakForce(v.of("mass"), 1, METER)));
    works(step("limit", Unit.NEWTON).by(v -> ForceZone.CLOSING_GAP.peakLimit()));
    formula(
        "E = m v^2/2; mean force E/x; peak v sqrt(k m) with k = 500 N/mm; speed for 400 N:"
            + " 400/sqrt(k m); m mass, v speed, x way that edge and obstruction give");
    validity(
        "The drive is switched off and no longer pushes, which is the best case. The peak"
            + " is that of the meter's stiffness; a person is softer, a post is harder.");
    source(
        Leaves.MECHANICS
            + "; stiffness of the meter: EN 12453 (text of 2001); 400 N: summaries of EN 12453");
    lastWord(Leaves.DECIDES);
    notes(Cautions.NEVER_A_BODY);
    says(
        when(
            v -> v.of("mean-force") > v.of("limit"),
            "Stopped within {give} the leaf pushes with {mean-force} on average, already more than"
                + " the {limit} of a closing gap: it needs a softer edge, less speed before the"
                + " post, or a way to see people before it touches them."),
        otherwise(
            "Stopped within {give} the leaf pushes with {mean-force} on average; the peak is"
                + " higher, and only a measured curve shows it (obstruction-force)."));
    says("The energy grows with the square of the speed: half the speed is a quarter of it.");
  }
}
