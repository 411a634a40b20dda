package yett.worksheet.leaf;

import yett.calculation.Leaf;
import yett.calculation.ReleasedLeaf;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * The motion on a grade of a leaf that is released from its drive. Source: {@link ReleasedLeaf}.
 */
final class LeafReleased extends Worksheet {
  LeafReleased() {
    super(Subject.LEAF, "leaf-released", "what a grade does when the leaf is released");
    asks(
        reading("grade", Unit.PERCENT, "rise over run of the way, without sign")
            .asSlope()
            .possible(0, 30),
        Leaves.mass(),
        reading("resistance", Unit.PERCENT, "rolling resistance; the lowest it may have is safe")
            .usually("1 %")
            .possible(0, 50),
        reading("way", Unit.METRE, "how far it can run").usually("5 m").possible(0.1, 50));
    tells(
        number("acceleration", Unit.METRE_PER_SECOND_SQUARED, "acceleration")
            .by(v -> ReleasedLeaf.acceleration(v.fraction("resistance"), v.fraction("grade"))),
        number("speed", Unit.METRE_PER_SECOND, "speed at the end")
            .by(
                v ->
                    ReleasedLeaf.speedAfter(
                        v.of("way"), v.fraction("resistance"), v.fraction("grade"))),
        number("time", Unit.SECOND, "time until then")
            .by(
                v ->
                    ReleasedLeaf.timeFor(
                        v.of("way"), v.fraction("resistance"), v.fraction("grade")))
            .when(v -> v.of("speed") > 0),
        number("energy", Unit.JOULE, "energy at the end")
            .by(v -> Leaf.kineticEnergy(v.of("mass"), v.of("speed"))),
        number("holding", Unit.NEWTON, "force that holds it")
            .by(
                v ->
                    ReleasedLeaf.holdingForce(
                        v.of("mass"), v.fraction("resistance"), v.fraction("grade"))),
        number("edge", Unit.PERCENT, "runs from a grade of")
            .by(v -> 100 * Leaf.selfMovingGrade(v.fraction("resistance"))));
    works(step("driven", Unit.JOULE).by(v -> Leaf.kineticEnergy(v.of("mass"), 0.3)));
    formula(
        "a = g (sin b - c cos b), 0 if negative, tan b = grade; v = sqrt(2 a s), t = sqrt(2 s/a);"
            + " hold m a; c rolling resistance, s way, m mass");
    validity(
        "A straight grade over the whole way. At rest a leaf sticks a little more than it rolls: it"
            + " may stand still and run away at a touch or a gust.");
    source(
        Leaves.MECHANICS
            + ", inclined plane; 1 % for sound wheels on a clean track common practice");
    lastWord(
        "ASTM F2200 wants no motion by gravity when the operator is disconnected; a gate"
            + " that runs by itself has to be put right.");
    notes(Cautions.RELEASE);
    says(
        when(
                v -> v.has("time"),
                "The released leaf runs downhill: after {way}, {time} later, it has {speed} and"
                    + " {energy}, where a driven leaf of 0.3 m/s has {driven}.",
                "At rest, {holding} holds it; once it runs, nobody stops it by hand.")
            .warning(
                Note.danger(
                    "The leaf will run away when the drive or the chain lets go. Death of whoever"
                        + " is in its way. Chock it on the downhill side and tie it back before"
                        + " anything is released, and keep everybody off that side.")),
        otherwise("Released on {grade} the leaf stays where it is; it would run from {edge} on."));
    says(
        when(v -> v.has("time")),
        when(
            v -> v.of("grade") > 0.5 * v.of("edge"),
            "That is near: a push or a gust moves it a long way. Chock it all the same."),
        otherwise("Keep a hand on it all the same: wind and people move it easily."));
  }
}
