package yett.worksheet.sensing;

import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.PhotoBeam;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** How far off a beam lands, and how well it has to be aimed. Source: {@link PhotoBeam}. */
final class BeamAim extends Worksheet {
  BeamAim() {
    super(Subject.SENSING, "beam-aim", "aim of a photo-beam over its distance");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("distance", Unit.METRE, "distance from sender to receiver")
            .possible(0.1, 200),
        Input.reading("half-angle", Unit.DEGREE, "half of the sender's angle of light")
            .usually("3 deg")
            .possible(0.05, 45),
        Input.reading("turned", Unit.DEGREE, "angle by which the sender is turned off")
            .mayBeLeftOut()
            .possible(0, 60),
        Input.reading("off", Unit.MILLIMETRE, "how far beside the receiver the light lands")
            .mayBeLeftOut()
            .possible(0, 20000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("spot", Unit.MILLIMETRE, "width of the light there"),
        Output.reading("per-degree", Unit.MILLIMETRE, "moved by one degree"),
        Output.reading("lands-off", Unit.MILLIMETRE, "lands beside by"),
        Output.reading("turn-back", Unit.DEGREE, "turn it back by"));
  }

  @Override
  public String formula() {
    return "off = R tan(t), width = 2 R tan(half-angle), t = atan(off/R)";
  }

  @Override
  public String validity() {
    return "Geometry of a cone of light; its rim is weak, so use no more than half of it. The"
        + " receiver has such an angle as well: both must face each other.";
  }

  @Override
  public String source() {
    return "geometry; half of the cone from common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Its height and place follow the maker's instructions and UL 325 or EN 12453.");
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.warning(
            "While the beam is aimed it may not stop the gate. Crushing. Switch the operator off,"
                + " and prove the beam with the gate running before you leave."));
  }

  @Override
  protected Results work(Entries entries) {
    double distance = entries.in("distance", Unit.METRE);
    Results results =
        new Results()
            .with(
                "spot",
                2 * PhotoBeam.offset(distance, entries.in("half-angle", Unit.DEGREE)),
                Unit.METRE)
            .with("per-degree", PhotoBeam.offset(distance, 1), Unit.METRE);
    if (entries.has("turned")) {
      results.with(
          "lands-off", PhotoBeam.offset(distance, entries.in("turned", Unit.DEGREE)), Unit.METRE);
    }
    if (entries.has("off")) {
      results.with(
          "turn-back", PhotoBeam.angle(distance, entries.in("off", Unit.METRE)), Unit.DEGREE);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double spot = results.in("spot", Unit.MILLIMETRE);
    Meaning meaning =
        Meaning.of(
            "A post that leans by one degree moves the light "
                + tell(results.in("per-degree", Unit.MILLIMETRE), Unit.MILLIMETRE)
                + " there; the light is "
                + tell(spot, Unit.MILLIMETRE)
                + " wide.");
    double off =
        entries.has("off")
            ? entries.in("off", Unit.MILLIMETRE)
            : results.has("lands-off") ? results.in("lands-off", Unit.MILLIMETRE) : -1;
    if (off < 0) {
      return meaning;
    }
    return meaning.and(
        off > spot / 2
            ? "It misses the receiver: aim it, and look what has moved the post."
            : off > spot / 4
                ? "It hangs on the rim: it works now and fails when wind, sun or dirt come; aim it."
                : "It is aimed well enough.");
  }
}
