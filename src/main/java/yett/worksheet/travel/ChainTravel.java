package yett.worksheet.travel;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.metres;
import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.MotorTurns;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;
import yett.worksheet.chain.Chains;

/** Chain travel by turns of the motor: x = n N p/i. Source: {@link MotorTurns}. */
final class ChainTravel extends Worksheet {
  ChainTravel() {
    super(Subject.TRAVEL, "chain-travel", "chain travel by turns of the motor");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Chains.size(),
        Ways.teeth(),
        Ways.ratio(),
        Input.reading("turns", Unit.ONE, "turns of the motor, to see how far it goes")
            .possible(0, 1_000_000)
            .mayBeLeftOut(),
        Input.reading("per-minute", Unit.ONE, "turns of the motor in a minute, for the speed")
            .possible(0, 20_000)
            .mayBeLeftOut(),
        Ways.opening().mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("per-turn", Unit.MILLIMETRE, "chain for a motor turn"),
        Output.reading("per-sprocket", Unit.MILLIMETRE, "for a sprocket turn"),
        Output.reading("travel", Unit.METRE, "travel of those turns"),
        Output.reading("speed", Unit.METRE_PER_SECOND, "speed"),
        Ways.turns("needed", "turns for the opening"),
        Output.reading("ripple", Unit.PERCENT, "speed rises and falls"));
  }

  @Override
  public String formula() {
    return "x = n N p/i; v = r N p/(60 i); turns D i/(N p); speed falls by 1 - cos(180 deg/N) within"
        + " each pitch; n turns, N teeth, p pitch, i ratio, r turns a minute, D opening";
  }

  @Override
  public String validity() {
    return "A new chain that does not slip; a worn one goes as far for each tooth, as teeth count"
        + " pitches and every pitch has grown, up to 3 %.";
  }

  @Override
  public String source() {
    return Ways.GEOMETRY + "; pitches: ASME B29.1, ISO 606";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.empty();
  }

  @Override
  protected Results work(Entries entries) {
    MotorTurns drive =
        new MotorTurns(
            entries.in("ratio", Unit.ONE), entries.whole("teeth"), Chains.chosen(entries).pitch());
    Results results =
        new Results()
            .with("per-turn", drive.perTurn(), Unit.METRE)
            .with("per-sprocket", drive.travel(drive.ratio()), Unit.METRE)
            .with("ripple", 100 * drive.speedRipple(), Unit.PERCENT);
    if (entries.has("turns")) {
      results.with("travel", drive.travel(entries.in("turns", Unit.ONE)), Unit.METRE);
    }
    if (entries.has("per-minute")) {
      results.with("speed", drive.speed(entries.in("per-minute", Unit.ONE)), Unit.METRE_PER_SECOND);
    }
    if (entries.has("opening")) {
      results.with("needed", drive.turns(entries.in("opening", Unit.METRE)), Unit.ONE);
    }
    return results;
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Meaning meaning =
        Meaning.of(
            "Each turn that the controller loses or gains moves the stop by "
                + both(results.in("per-turn", Unit.MILLIMETRE), Unit.MILLIMETRE, Unit.INCH)
                + "; a tooth that the chain jumps moves it by "
                + both(1000 * Chains.chosen(entries).pitch(), Unit.MILLIMETRE, Unit.INCH)
                + ".");
    if (results.has("travel")) {
      meaning =
          meaning.and(
              "Those turns move the leaf " + metres(results.in("travel", Unit.METRE)) + ".");
    }
    if (results.has("needed")) {
      meaning =
          meaning.and(
              "The whole opening is "
                  + tell(results.in("needed", Unit.ONE), Unit.ONE)
                  + " turns of the motor.");
    }
    return results.in("ripple", Unit.PERCENT) > 4
        ? meaning.and(
            "With so few teeth the speed rises and falls by "
                + percent(results.in("ripple", Unit.PERCENT) / 100)
                + " in every pitch, which one hears.")
        : meaning;
  }
}
