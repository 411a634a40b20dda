package yett.worksheet.leaf;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import yett.calculation.Wind;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Wind on the broad side of the leaf. Source: {@link Wind}. */
final class WindForce extends Worksheet {
  /** m/s from which nobody works on a leaf: Beaufort 8, gale; common practice. */
  private static final double GALE = 17;

  WindForce() {
    super(Subject.LEAF, "wind-force", "what wind does to the leaf and its drive");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("wind", Unit.METRE_PER_SECOND, "speed of the gusts at the gate")
            .possible(0, 80)
            .good(0, 45),
        Input.reading("width", Unit.METRE, "length of the leaf").possible(0.5, 40),
        Input.reading("height", Unit.METRE, "height of the leaf").possible(0.3, 8),
        Input.reading("filled", Unit.PERCENT, "share of its outline that is filled; boards 100 %")
            .usually("30 %")
            .possible(1, 100));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("across", Unit.NEWTON, "force across the leaf"),
        Output.reading("coefficient", Unit.ONE, "force coefficient"),
        Output.reading("drive-low", Unit.NEWTON, "drive feels, from"),
        Output.reading("drive-high", Unit.NEWTON, "drive feels, to"));
  }

  @Override
  public String formula() {
    return "W = 0.613 V^2 C A s (Pa, m/s, m2), a leaf filled 70 % or more counts as solid (s = 1);"
        + " drive feels k W; V wind speed, C force coefficient, A outline, s filled share, k guide"
        + " friction 0.05 to 0.25";
  }

  @Override
  public String validity() {
    return "Gusts as read at the gate, near sea level, square to the leaf. The wind pushes across the"
        + " travel: guides and posts carry it, the drive feels their friction only. No design for"
        + " storms: that has more factors.";
  }

  @Override
  public String source() {
    return "ASCE 7 velocity pressure and table 29.4-2 (open frames 2.0, 1.8, 1.6); solid leaf 1.3"
        + " from memory of ASCE 7; guide friction common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "Whether posts, guides and footings bear the wind of the place is for a structural engineer"
            + " and the building code.");
  }

  @Override
  protected Results work(Entries entries) {
    double filled = entries.fraction("filled");
    double across =
        Wind.force(
            entries.in("wind", Unit.METRE_PER_SECOND),
            entries.in("width", Unit.METRE) * entries.in("height", Unit.METRE),
            filled);
    return new Results()
        .with("across", across, Unit.NEWTON)
        .with("coefficient", Wind.coefficient(filled), Unit.ONE)
        .with("drive-low", Wind.addedDriveForce(across, Wind.GUIDE_FRICTION.low()), Unit.NEWTON)
        .with("drive-high", Wind.addedDriveForce(across, Wind.GUIDE_FRICTION.high()), Unit.NEWTON);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Meaning meaning =
        Meaning.of(
            "Guides and posts hold "
                + told(results, "across")
                + "; the drive feels "
                + told(results, "drive-low")
                + " with free guide rollers, up to "
                + told(results, "drive-high")
                + " with guides that drag.",
            "If that is near what the force setting leaves, the gate reverses in gusts: look to the"
                + " guides, and leave the force where its test has it.");
    return entries.in("wind", Unit.METRE_PER_SECOND) >= GALE
        ? meaning.with(
            Note.warning(
                "A leaf in a gale is a sail. It turns over whoever frees it from its guides. Do not"
                    + " release or lift the leaf in this wind; leave the gate as it stands."))
        : meaning;
  }

  private static String told(Results results, String id) {
    return both(results.in(id, Unit.NEWTON), Unit.NEWTON, Unit.POUND_FORCE);
  }
}
