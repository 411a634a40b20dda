package yett.worksheet.force;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.calculation.ForceCurve;
import yett.calculation.ForceZone;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** A recorded force against the limits of EN 12453. Source: {@link ObstructionForce}. */
final class ObstructionForceSheet extends Worksheet {
  ObstructionForceSheet() {
    super(Subject.FORCE, "obstruction-force", "a recorded force against the limits of EN 12453");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.file("curve", "CSV file of the meter, time and force on each line"),
        Input.choice(
            "zone",
            "where it was recorded",
            Arrays.stream(ForceZone.values()).map(z -> new Choice(id(z), z.words())).toList()));
  }

  private static String id(ForceZone zone) {
    return zone.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.text("verdict", "verdict"),
        Output.reading("peak", Unit.NEWTON, "peak"),
        Output.reading("peak-limit", Unit.NEWTON, "peak allowed"),
        Output.reading("above-150", Unit.SECOND, "time above 150 N"),
        Output.reading("after-5-s", Unit.NEWTON, "left 5 s after contact"),
        Output.reading("record", Unit.SECOND, "length of the record"),
        Output.reading("rate", Unit.HERTZ, "samples in a second"),
        Output.reading("largest-gap", Unit.SECOND, "longest time without one"));
  }

  @Override
  public String formula() {
    return "peak at most 400 N in a gap of 50 mm to 500 mm, 1400 N elsewhere; above 150 N for 0.75 s"
        + " at most, from the first to the last crossing; at most 25 N from 5 s after contact (25 N)"
        + " on; straight lines between samples";
  }

  @Override
  public String validity() {
    return "Meter with faces of 80 mm, a spring of 500 N/mm, 25 N to 2000 N, 200 samples a second, 5"
        + " % of error, zeroed and started before the blow; a gap of more than 6 ms between samples"
        + " or a first sample over 5 N leaves it open. One record is no test of a gate: each point three times and averaged, at gaps"
        + " of 50, 300 and 500 mm, at 50 mm, middle and 300 mm below the top.";
  }

  @Override
  public String source() {
    return "EN 12453 through summaries of a trade federation, test houses and installers: 400 N below"
        + " 500 mm, 1400 N elsewhere, 150 N within 0.75 s and 25 N after 5 s are published there; the"
        + " lower bound of 50 mm, the zone between flat faces, and counting from contact are from"
        + " memory";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The standard itself, the meter's calibration and the person who signs for the gate decide;"
            + " in North America UL 325 asks for reversal and entrapment protection instead.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.NEVER_A_BODY);
  }

  private static ObstructionForce force(Entries entries) {
    ForceCurve curve = CurveFile.read(entries.shown("curve"));
    return new ObstructionForce(curve, zone(entries));
  }

  private static ForceZone zone(Entries entries) {
    return Arrays.stream(ForceZone.values())
        .filter(zone -> id(zone).equals(entries.choice("zone").id()))
        .findFirst()
        .orElseThrow();
  }

  @Override
  protected Results work(Entries entries) {
    ObstructionForce force = force(entries);
    ForceCurve curve = force.curve();
    Results results =
        new Results()
            .with("verdict", words(force.verdict()))
            .with("peak", curve.peak().force(), Unit.NEWTON)
            .with("peak-limit", force.zone().peakLimit(), Unit.NEWTON)
            .with("above-150", force.dynamicPeriod(), Unit.SECOND)
            .with("record", curve.end() - curve.start(), Unit.SECOND)
            .with("rate", curve.rate(), Unit.HERTZ)
            .with("largest-gap", curve.largestGap(), Unit.SECOND)
            .with(ForcePlot.of(force));
    if (force.contact().isPresent()) {
      force.afterRelease().ifPresent(left -> results.with("after-5-s", left, Unit.NEWTON));
    }
    return results;
  }

  private static String words(Verdict verdict) {
    return switch (verdict) {
      case MET -> "within the limits";
      case MISSED -> "over the limits";
      case OPEN -> "open, this record does not tell";
    };
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    return ForceMeaning.of(force(entries));
  }
}
