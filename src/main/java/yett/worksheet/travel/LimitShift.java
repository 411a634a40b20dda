package yett.worksheet.travel;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.MotorTurns;
import yett.calculation.Travel;
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
import yett.worksheet.chain.Chains;

/** How far off the limits are after links were taken out. Source: {@link Travel#limitShift}. */
final class LimitShift extends Worksheet {
  private static final Choice FAR =
      new Choice("far", "at the bracket of the leading edge, which closes the gate");
  private static final Choice NEAR = new Choice("near", "at the bracket of the tail");

  LimitShift() {
    super(Subject.TRAVEL, "limit-shift", "how far off the limits are after links were taken out");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Input.whole("links", "pitches taken out").usually("2").possible(1, 40),
        Input.choice("end", "where they were taken out", FAR, NEAR).usually("far"),
        Ways.teeth(),
        Ways.ratio().mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("shift", Unit.MILLIMETRE, "limits off by up to"),
        Ways.turns("sprocket-turns", "turns of the sprocket"),
        Ways.turns("motor-turns", "turns of the motor"));
  }

  @Override
  public String formula() {
    return "x = n p; sprocket turns x/(N p); motor turns i x/(N p); n pitches, p pitch, N teeth, i"
        + " ratio";
  }

  @Override
  public String validity() {
    return "Up to that much: what comes out of slack does not move the leaf. Both limits shift the"
        + " same way, not by the same amount.";
  }

  @Override
  public String source() {
    return Ways.GEOMETRY + "; pitches: ASME B29.1, ISO 606";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(Ways.DECIDES);
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.MOVING_LEAF);
  }

  @Override
  protected Results work(Entries entries) {
    double pitch = Chains.chosen(entries).pitch();
    int teeth = entries.whole("teeth");
    double shift = Travel.limitShift(entries.whole("links"), pitch);
    Results results =
        new Results()
            .with("shift", shift, Unit.METRE)
            .with("sprocket-turns", new MotorTurns(1, teeth, pitch).turns(shift), Unit.ONE);
    if (entries.has("ratio")) {
      results.with(
          "motor-turns",
          new MotorTurns(entries.in("ratio", Unit.ONE), teeth, pitch).turns(shift),
          Unit.ONE);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    String shift = both(results.in("shift", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH);
    boolean far = entries.choice("end").equals(FAR);
    Meaning meaning =
        Meaning.of(
            "The leaf stops up to "
                + shift
                + (far
                    ? " further open, most of all at the open end, where this run pulls it."
                    : " further closed, most of all at the closed end, where this run pulls it: it"
                        + " can press on the post."),
            "Finding the reference does not put that right: the marker sits on the chain, and the"
                + " leaf has moved along the chain.",
            "Teach the limits again before it runs by itself, with a hand at the stop button.");
    return results.has("motor-turns")
        ? meaning.and(
            "The controller's count is off by "
                + tell(results.in("motor-turns", Unit.ONE), Unit.ONE)
                + " turns.")
        : meaning;
  }
}
