package yett.worksheet.sensing;

import yett.calculation.PhotoBeam;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * How far from the receiver a beam lands, and how accurately it has to be aimed. Source: {@link
 * PhotoBeam}.
 */
final class BeamAim extends Worksheet {
  BeamAim() {
    super(Subject.SENSING, "beam-aim", "aim of a photo-beam over its distance");
    asks(
        reading("distance", Unit.METRE, "distance from sender to receiver").possible(0.1, 200),
        reading("half-angle", Unit.DEGREE, "half of the sender's angle of light")
            .usually("3 deg")
            .possible(0.05, 45),
        reading("turned", Unit.DEGREE, "angle by which the sender is turned off")
            .mayBeLeftOut()
            .possible(0, 60),
        reading("off", Unit.MILLIMETRE, "how far off the receiver the light lands")
            .mayBeLeftOut()
            .possible(0, 20000));
    tells(
        number("spot", Unit.MILLIMETRE, "width of the light there")
            .by(Unit.METRE, v -> 2 * PhotoBeam.offset(v.of("distance"), v.of("half-angle"))),
        number("per-degree", Unit.MILLIMETRE, "moved by one degree")
            .by(Unit.METRE, v -> PhotoBeam.offset(v.of("distance"), 1)),
        number("lands-off", Unit.MILLIMETRE, "lands off by")
            .by(Unit.METRE, v -> PhotoBeam.offset(v.of("distance"), v.of("turned")))
            .given("turned"),
        number("turn-back", Unit.DEGREE, "turn it back by")
            .by(v -> PhotoBeam.angle(v.of("distance"), v.metres("off")))
            .given("off"));
    works(
        step("beside", Unit.MILLIMETRE)
            .by(v -> v.of(v.has("off") ? "off" : "lands-off"))
            .when(v -> v.has("off") || v.has("turned")));
    formula("off = R tan(t), width = 2 R tan(half-angle), t = atan(off/R)");
    validity(
        "Geometry of a cone of light; its rim is weak, so use no more than half of it. The receiver"
            + " has such an angle as well: both must face each other.");
    source("geometry; half of the cone from common practice");
    lastWord("Its height and place follow the maker's instructions and UL 325 or EN 12453.");
    notes(
        Note.warning(
            "While the beam is being aimed it might not stop the gate. Crushing. Switch the"
                + " operator off, and prove the beam with the gate running before you leave."));
    says(
        "A post that leans by one degree moves the light {per-degree} there; the light is {spot}"
            + " wide.");
    says(
        when(v -> !v.has("beside")),
        when(
            v -> v.of("beside") > v.of("spot") / 2,
            "It misses the receiver: aim it, and find out what has moved the post."),
        when(
            v -> v.of("beside") > v.of("spot") / 4,
            "It is on the rim of the light: it works now and fails when wind, sun or dirt"
                + " come; aim it."),
        otherwise("It is aimed well enough."));
  }
}
