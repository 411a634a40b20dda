package yett.worksheet.travel;

import java.util.stream.Stream;
import yett.calculation.Travel;
import yett.calculation.TravelProfile;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.InputException;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/** Time of a run at a speed, slow-downs included. Source: {@link TravelProfile}. */
final class TravelTime extends Worksheet {
  /** Share of the calculated time by which a reading may differ, where the slow-downs are known. */
  private static final double FITS = 0.1;

  /**
   * Highest speed (m/s): UL 325 for slide operators of class I and II, as a trade body's data sheet
   * gives it.
   */
  private static final double FASTEST = 0.3048;

  TravelTime() {
    super(Subject.TRAVEL, "travel-time", "time for the opening at a speed, slow-downs included");
    asks(
        TravelInputs.opening(),
        reading("speed", Unit.METRE_PER_SECOND, "speed between the slow-downs")
            .possible(0.01, 3)
            .good(0.01, 1),
        reading("speeding-up", Unit.METRE_PER_SECOND_SQUARED, "acceleration at the start")
            .usually("0.3 m/s2")
            .possible(0.01, 10),
        reading("slowing-down", Unit.METRE_PER_SECOND_SQUARED, "deceleration")
            .usually("0.3 m/s2")
            .possible(0.01, 10),
        reading("slow-start", Unit.METRE, "length of the slow-down at the start")
            .usually("0 m")
            .possible(0, 10),
        reading("slow-end", Unit.METRE, "length of the slow-down at the end")
            .usually("0.3 m")
            .possible(0, 10),
        reading("slow-speed", Unit.METRE_PER_SECOND, "speed in the slow-downs")
            .usually("0.1 m/s")
            .possible(0.005, 1),
        reading("measured", Unit.SECOND, "time by the stopwatch")
            .possible(0.1, 3600)
            .mayBeLeftOut());
    refuses(
        v ->
            (v.of("slow-start") > 0 || v.of("slow-end") > 0) && v.of("slow-speed") >= v.of("speed"),
        "slow-speed must be below speed. Without slow-downs: slow-start=0 m slow-end=0 m.");
    tells(
        number("time", Unit.SECOND, "time of the run").by(TravelTime::time),
        number("usual-low", Unit.SECOND, "usual, from")
            .by(v -> Travel.usualTime(v.of("opening"), v.of("speed")).low()),
        number("usual-high", Unit.SECOND, "usual, to")
            .by(v -> Travel.usualTime(v.of("opening"), v.of("speed")).high()),
        number("mean-speed", Unit.METRE_PER_SECOND, "speed on average")
            .by(v -> v.of("opening") / v.of("time")));
    works(
        step("least", Unit.SECOND)
            .by(
                v ->
                    Math.min(
                        v.of("usual-low"),
                        slowDownsKnown(v) ? v.of("time") * (1 - FITS) : Double.MAX_VALUE)),
        step("most", Unit.SECOND)
            .by(
                v ->
                    Math.max(
                        v.of("usual-high"), slowDownsKnown(v) ? v.of("time") * (1 + FITS) : 0)));
    formula(
        "each piece by uniform acceleration: slow-downs at slow speed, ramps (v2^2 - v1^2)/(2 a),"
            + " the rest at full speed; without slow-downs D/v + (v/2)(1/a + 1/d), or sqrt(2 D (1/a + 1/d))"
            + " if D is too short; usual: D/v + 2 s to D/v + 6 s");
    validity(
        "A run without a reversal, which ends from slow speed at once. The usual range is what an"
            + " interview expects of a gate whose slow-downs nobody knows.");
    source(
        "uniform acceleration; 2 s to 6 s for the slow-downs common practice; 0.3048 m/s"
            + " (1 ft/s) for slide operators of class I and II: UL 325 as a trade body's data"
            + " sheet quotes it");
    lastWord(
        "The speed a gate may have is decided by UL 325 or EN 12453 and the force test,"
            + " not by the stopwatch.");
    notes(Cautions.MOVING_LEAF);
    says(
        when(
            v -> !v.has("measured"),
            "The run should take {time}; a run that is clearly longer is short of voltage or"
                + " drags."),
        when(
            v -> v.of("measured") > v.of("most"),
            "Too slow, {least} to {most} are usual: {measured}, worked out {time}.",
            "Read the motor's voltage while it runs: if it is low, look at batteries and supply; if"
                + " it is right, at leaf and gearbox."),
        when(
            v -> v.of("measured") < v.of("least"),
            "Faster than the usual {least} to {most}: {measured}, worked out {time}.",
            "Maybe a slow-down is missing: see that the leaf slows before both ends, and test the"
                + " force there."),
        otherwise(
            "The gate runs as it should, {least} to {most} are usual: {measured}, worked out"
                + " {time}."));
    says(
        when(
            v -> v.of("speed") > FASTEST,
            "{speed} is more than the 1 ft/s (0.305 m/s) of slide operators of class I and II."));
  }

  private static double time(Values v) {
    try {
      return new TravelProfile(
              v.of("opening"),
              v.of("speed"),
              v.of("speeding-up"),
              v.of("slowing-down"),
              v.of("slow-start"),
              v.of("slow-end"),
              v.of("slow-speed"))
          .time();
    } catch (IllegalArgumentException e) {
      throw new InputException(
          "Slow-downs and ramps take more room than there is at these speeds. Give shorter ones, a"
              + " lower speed, or slow-start=0 m slow-end=0 m.");
    }
  }

  /** Whether somebody gave a slow-down or a ramp of this gate. */
  private static boolean slowDownsKnown(Values v) {
    return Stream.of("speeding-up", "slowing-down", "slow-start", "slow-end", "slow-speed")
        .anyMatch(v::typed);
  }
}
