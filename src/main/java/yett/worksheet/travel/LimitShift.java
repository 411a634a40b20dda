package yett.worksheet.travel;

import yett.calculation.MotorTurns;
import yett.calculation.Travel;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;
import yett.worksheet.chain.Chains;

/** The shift of the travel limits after links were taken out. Source: {@link Travel#limitShift}. */
final class LimitShift extends Worksheet {
  LimitShift() {
    super(Subject.TRAVEL, "limit-shift", "how far off the limits are after links were taken out");
    asks(
        Chains.size(),
        whole("links", "pitches taken out").usually("2").possible(1, 40),
        choice(
                "end",
                "where they were taken out",
                new Choice("far", "at the bracket of the leading edge, which closes the gate"),
                new Choice("near", "at the bracket of the tail"))
            .usually("far"),
        TravelInputs.teeth(),
        TravelInputs.ratio().mayBeLeftOut());
    tells(
        number("shift", Unit.MILLIMETRE, "limits off by up to")
            .by(Unit.METRE, v -> Travel.limitShift(v.whole("links"), Chains.pitch(v))),
        number("sprocket-turns", Unit.ONE, "turns of the sprocket").by(v -> turns(v, 1)),
        number("motor-turns", Unit.ONE, "turns of the motor")
            .by(v -> turns(v, v.of("ratio")))
            .given("ratio"));
    formula(
        "x = n p; sprocket turns x/(N p); motor turns i x/(N p); n pitches, p pitch, N teeth, i"
            + " ratio");
    validity(
        "Up to that much: what comes out of slack does not move the leaf. Both limits shift the"
            + " same way, not by the same amount.");
    source(TravelInputs.GEOMETRY + "; pitches: ASME B29.1, ISO 606");
    lastWord(TravelInputs.DECIDES);
    notes(Cautions.MOVING_LEAF);
    says(
        when(
            v -> v.chose("end", "far"),
            "The leaf stops up to {shift} further open, most of all at the open end, where this run"
                + " pulls it."),
        otherwise(
            "The leaf stops up to {shift} further closed, most of all at the closed end, where this"
                + " run pulls it: it can press on the post."));
    says(
        "Finding the reference does not put that right: the marker sits on the chain, and the leaf"
            + " has moved along the chain.",
        "Teach the limits again before it runs by itself, with a hand at the stop button.");
    says(when(v -> v.has("motor-turns"), "The controller's count is off by {motor-turns} turns."));
  }

  private static double turns(Values v, double ratio) {
    MotorTurns drive = new MotorTurns(ratio, v.whole("teeth"), Chains.pitch(v));
    return drive.turns(v.metres("shift"));
  }
}
