package yett.worksheet.sensing;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.PhotoBeam;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Excess gain of a photo-beam against what its surroundings ask for. Source: {@link PhotoBeam}. */
final class BeamMargin extends Worksheet {
  BeamMargin() {
    super(Subject.SENSING, "beam-margin", "light that a photo-beam has to spare");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("range", Unit.METRE, "range that the pair is rated for").possible(0.2, 200),
        Input.reading("distance", Unit.METRE, "distance from sender to receiver")
            .possible(0.1, 200),
        Input.reading("windows", Unit.PERCENT, "light that both windows together let through")
            .usually("100 %")
            .possible(0.1, 100),
        Input.choice(
                "air",
                "air and dirt at the place",
                new Choice("clean", "clean air"),
                new Choice("dusty", "a little dust, spray or haze"),
                new Choice("dirty", "dust on the lenses, fog, rain"),
                new Choice("filthy", "thick fog, sawdust, salt crust"))
            .usually("dusty"));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("gain", Unit.ONE, "excess gain"),
        Output.reading("wanted", Unit.ONE, "wanted in such air"),
        Output.reading("fails-at", Unit.PERCENT, "fails below this light"),
        Output.reading("farthest", Unit.METRE, "farthest in such air"));
  }

  @Override
  public String formula() {
    return "gain = (Rmax/R)2 T; Rmax rated range, R distance, T light let through; wanted 1.5 in"
        + " clean air, 5 with some dirt, 10 and 50 with more";
  }

  @Override
  public String validity() {
    return "Sender and receiver apart and facing, beyond a few tens of centimetres, aimed well. The"
        + " rated range of some makes already holds a margin: their data sheet says."
        + " Reflecting beams lose twice.";
  }

  @Override
  public String source() {
    return "excess gain as sensor handbooks define it, 1.5 for clean air published; 5, 10 and 50"
        + " from memory of the same; inverse square of the distance, optics";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The data sheet of the beam goes first; what a beam must protect is for UL 325 or EN"
            + " 12453.");
  }

  @Override
  protected Results work(Entries entries) {
    double range = entries.in("range", Unit.METRE);
    double transmission = entries.fraction("windows");
    double gain = PhotoBeam.excessGain(range, entries.in("distance", Unit.METRE), transmission);
    double wanted =
        switch (entries.choice("air").id()) {
          case "clean" -> 1.5;
          case "dusty" -> 5;
          case "dirty" -> 10;
          default -> 50;
        };
    return new Results()
        .with("gain", gain, Unit.ONE)
        .with("wanted", wanted, Unit.ONE)
        .with("fails-at", Math.min(100, 100 / gain), Unit.PERCENT)
        .with("farthest", range * Math.sqrt(transmission / wanted), Unit.METRE);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double gain = results.in("gain", Unit.ONE);
    double wanted = results.in("wanted", Unit.ONE);
    if (gain < entries.fraction("windows")) {
      return Meaning.of(
          entries.shown("distance")
              + " is beyond the "
              + entries.shown("range")
              + " that the pair is rated for: even clean and well aimed it gets too little light to"
              + " work. Bring the two closer together, or fit a pair of a longer range.");
    }
    if (gain < 1) {
      return Meaning.of(
          "The receiver gets too little light to work at all: clean both windows, then aim anew.");
    }
    return Meaning.of(
        gain < wanted
            ? "A gain of "
                + tell(gain, Unit.ONE)
                + " is less than the "
                + tell(wanted, Unit.ONE)
                + " wanted here: the gate will stop for fog and dirt with nobody there."
            : "A gain of "
                + tell(gain, Unit.ONE)
                + " leaves room: if it blocks all the same, suspect aim, wiring or the receiver.",
        "It gives up when dirt leaves "
            + percent(results.in("fails-at", Unit.PERCENT) / 100)
            + " of the light it has now.");
  }
}
