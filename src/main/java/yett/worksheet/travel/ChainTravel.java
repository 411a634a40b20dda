package yett.worksheet.travel;

import yett.calculation.MotorTurns;
import yett.quantity.Unit;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;
import yett.worksheet.chain.Chains;

/** Chain travel by turns of the motor: x = n N p/i. Source: {@link MotorTurns}. */
final class ChainTravel extends Worksheet {
  ChainTravel() {
    super(Subject.TRAVEL, "chain-travel", "chain travel by turns of the motor");
    asks(
        Chains.size(),
        TravelInputs.teeth(),
        TravelInputs.ratio(),
        reading("turns", Unit.ONE, "turns of the motor, to see how far it goes")
            .possible(0, 1_000_000)
            .mayBeLeftOut(),
        reading("per-minute", Unit.ONE, "turns of the motor in a minute, for the speed")
            .possible(0, 20_000)
            .mayBeLeftOut(),
        TravelInputs.opening().mayBeLeftOut());
    tells(
        number("per-turn", Unit.MILLIMETRE, "chain for a motor turn")
            .by(Unit.METRE, v -> drive(v).perTurn()),
        number("per-sprocket", Unit.MILLIMETRE, "for a sprocket turn")
            .by(Unit.METRE, v -> drive(v).travel(v.of("ratio"))),
        number("travel", Unit.METRE, "travel of those turns")
            .by(v -> drive(v).travel(v.of("turns")))
            .given("turns"),
        number("speed", Unit.METRE_PER_SECOND, "speed")
            .by(v -> drive(v).speed(v.of("per-minute")))
            .given("per-minute"),
        number("needed", Unit.ONE, "turns for the opening")
            .by(v -> drive(v).turns(v.of("opening")))
            .given("opening"),
        number("ripple", Unit.PERCENT, "speed rises and falls")
            .by(v -> 100 * drive(v).speedRipple()));
    works(step("pitch", Unit.MILLIMETRE).by(Unit.METRE, Chains::pitch));
    formula(
        "x = n N p/i; v = r N p/(60 i); turns D i/(N p); speed falls by 1 - cos(180 deg/N) within"
            + " each pitch; n turns, N teeth, p pitch, i ratio, r turns a minute, D opening");
    validity(
        "A new chain that does not slip; a worn one goes as far for each tooth, as teeth count"
            + " pitches and every pitch has grown, up to 3 %.");
    source(TravelInputs.GEOMETRY + "; pitches: ASME B29.1, ISO 606");
    says(
        "Each turn that the controller loses or gains moves the stop by {per-turn}; a tooth that"
            + " the chain jumps moves it by {pitch}.");
    says(when(v -> v.has("travel"), "Those turns move the leaf {travel}."));
    says(when(v -> v.has("needed"), "The whole opening is {needed} turns of the motor."));
    says(
        when(
            v -> v.of("ripple") > 4,
            "With so few teeth the speed rises and falls by {ripple} in every pitch, which"
                + " can be heard."));
  }

  private static MotorTurns drive(Values v) {
    return new MotorTurns(v.of("ratio"), v.whole("teeth"), Chains.pitch(v));
  }
}
