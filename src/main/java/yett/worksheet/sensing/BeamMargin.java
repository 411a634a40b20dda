package yett.worksheet.sensing;

import yett.calculation.PhotoBeam;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Compares the excess gain of a photo-beam with what its surroundings need. Source: {@link
 * PhotoBeam}.
 */
final class BeamMargin extends Worksheet {
  BeamMargin() {
    super(Subject.SENSING, "beam-margin", "light that a photo-beam has to spare");
    asks(
        reading("range", Unit.METRE, "range that the pair is rated for").possible(0.2, 200),
        reading("distance", Unit.METRE, "distance from sender to receiver").possible(0.1, 200),
        reading("windows", Unit.PERCENT, "light that both windows together let through")
            .usually("100 %")
            .possible(0.1, 100),
        choice(
                "air",
                "air and dirt at the place",
                new Choice("clean", "clean air"),
                new Choice("dusty", "a little dust, spray or haze"),
                new Choice("dirty", "dust on the lenses, fog, rain"),
                new Choice("filthy", "thick fog, sawdust, salt crust"))
            .usually("dusty"));
    tells(
        number("gain", Unit.ONE, "excess gain")
            .by(v -> PhotoBeam.excessGain(v.of("range"), v.of("distance"), v.fraction("windows"))),
        number("wanted", Unit.ONE, "wanted in such air").by(v -> wanted(v.choice("air").id())),
        number("fails-at", Unit.PERCENT, "fails below this light")
            .by(v -> Math.min(100, 100 / v.of("gain"))),
        number("farthest", Unit.METRE, "farthest in such air")
            .by(v -> v.of("range") * Math.sqrt(v.fraction("windows") / v.of("wanted"))));
    formula(
        "gain = (Rmax/R)2 T; Rmax rated range, R distance, T light let through; wanted 1.5 in clean"
            + " air, 5 with some dirt, 10 and 50 with more");
    validity(
        "Sender and receiver apart and facing, beyond a few tens of centimetres, aimed well. The"
            + " rated range of some makes already holds a margin: their data sheet says. Reflecting"
            + " beams lose twice.");
    source(
        "excess gain as sensor handbooks define it, 1.5 for clean air published; 5, 10 and 50 from"
            + " memory of the same; inverse square of the distance, optics");
    lastWord(
        "The data sheet of the beam goes first; what a beam must protect is for UL 325 or EN"
            + " 12453.");
    says(
        when(
            v -> v.of("gain") < v.fraction("windows"),
            "{distance typed} is beyond the {range typed} that the pair is rated for: even clean"
                + " and well aimed it gets too little light to work. Bring the two closer together,"
                + " or fit a pair of a longer range."),
        when(
            v -> v.of("gain") < 1,
            "The receiver gets too little light to work at all: clean both windows, then aim"
                + " again."),
        when(
            v -> v.of("gain") < v.of("wanted"),
            "A gain of {gain} is less than the {wanted} wanted here: the gate will stop for fog and"
                + " dirt with nobody there."),
        otherwise(
            "A gain of {gain} leaves room: if it blocks all the same, suspect aim, wiring or the"
                + " receiver."));
    says(
        when(
            v -> v.of("gain") >= 1,
            "It gives up when dirt leaves {fails-at} of the light it has now."));
  }

  private static double wanted(String air) {
    return switch (air) {
      case "clean" -> 1.5;
      case "dusty" -> 5;
      case "dirty" -> 10;
      default -> 50;
    };
  }
}
