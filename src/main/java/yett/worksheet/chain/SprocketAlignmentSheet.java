package yett.worksheet.chain;

import static yett.worksheet.Tell.both;

import java.util.List;
import java.util.Optional;
import yett.calculation.SprocketAlignment;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Whether sprocket, idlers and brackets stand in one line. Source: {@link SprocketAlignment}. */
final class SprocketAlignmentSheet extends Worksheet {
  SprocketAlignmentSheet() {
    super(Subject.CHAIN, "sprocket-alignment", "sprocket, idler or bracket out of line");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("distance", Unit.METRE, "distance between their centres").possible(0.05, 30),
        Input.reading(
                "offset", Unit.MILLIMETRE, "how far one face stands beside the line of the other")
            .possible(0, 500),
        Input.reading("lean", Unit.MILLIMETRE, "how far a shaft leans over that length")
            .possible(0, 100)
            .mayBeLeftOut(),
        Input.reading("lean-length", Unit.MILLIMETRE, "length along the shaft for lean")
            .usually("300 mm")
            .possible(20, 2000));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("allowed", Unit.MILLIMETRE, "offset to set it to"),
        Output.reading("runs-well", Unit.MILLIMETRE, "a slow chain bears"),
        Output.reading("angle", Unit.DEGREE, "chain leaves at"),
        Output.reading("lean-allowed", Unit.MILLIMETRE, "lean allowed"));
  }

  @Override
  public String formula() {
    return "to set it to: 1 mm up to 1 m, distance/1000 up to 10 m, 10 mm beyond; a chain below 0.5"
        + " m/s runs up to twice that; angle ="
        + " atan(offset/distance); lean allowed: length/300";
  }

  @Override
  public String validity() {
    return "Straight edge or string against the machined faces, the chain off or slack. Wheels that"
        + " float on their shaft are pushed to where they run.";
  }

  @Override
  public String source() {
    return "Complete Guide to Chain, 7.1.2.2 and fig. 7.7; a chain maker's guide allows 0.2 mm per"
        + " 100 mm below 0.5 m/s, which is twice as much; five times as the end of what is safe is a considered"
        + " judgement";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Chains.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.CHAIN);
  }

  @Override
  protected Results work(Entries entries) {
    double distance = entries.in("distance", Unit.METRE);
    double allowed = SprocketAlignment.permissibleOffset(distance);
    return new Results()
        .with("allowed", allowed, Unit.METRE)
        .with("runs-well", SprocketAlignment.RUNS_WELL * allowed, Unit.METRE)
        .with(
            "angle",
            SprocketAlignment.chainAngle(entries.in("offset", Unit.METRE), distance),
            Unit.DEGREE)
        .with(
            "lean-allowed",
            SprocketAlignment.permissibleLean(entries.in("lean-length", Unit.METRE)),
            Unit.METRE);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double offset = entries.in("offset", Unit.MILLIMETRE);
    double allowed = results.in("allowed", Unit.MILLIMETRE);
    String limit = both(allowed, Unit.MILLIMETRE, Unit.INCH);
    double runsWell = SprocketAlignment.RUNS_WELL * allowed;
    Meaning meaning =
        offset <= runsWell
            ? Meaning.of(
                "They stand in line: up to "
                    + limit
                    + " is allowed at this distance"
                    + (offset <= allowed
                        ? "."
                        : " where the line is set, and twice that where a chain runs as slowly as a"
                            + " gate's; set it when it is next worked on."))
            : Meaning.of(
                "Out of line: "
                    + both(offset, Unit.MILLIMETRE, Unit.INCH)
                    + " where "
                    + both(runsWell, Unit.MILLIMETRE, Unit.INCH)
                    + " is the most at which a gate's chain runs well, and "
                    + limit
                    + " is what it is set to.",
                offset <= SprocketAlignment.CLIMBS * allowed
                    ? "The chain will wear its side plates; put it in line at this visit."
                    : "The chain climbs the teeth on one side and can come off; put it in line"
                        + " before the gate runs again.");
    if (!entries.has("lean")) {
      return meaning;
    }
    boolean upright =
        entries.in("lean", Unit.MILLIMETRE) <= results.in("lean-allowed", Unit.MILLIMETRE);
    return meaning.and(
        upright
            ? "The shaft is upright enough."
            : "The shaft leans more than the "
                + both(results.in("lean-allowed", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH)
                + " allowed: shim the operator or its pad, then look at the line again.");
  }
}
