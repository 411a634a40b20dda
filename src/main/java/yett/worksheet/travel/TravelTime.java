package yett.worksheet.travel;

import static yett.worksheet.Tell.both;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.calculation.Range;
import yett.calculation.Travel;
import yett.calculation.TravelProfile;
import yett.quantity.Unit;
import yett.worksheet.Cautions;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Time of a run at a speed, slow zones included. Source: {@link TravelProfile}. */
final class TravelTime extends Worksheet {
  /** Share of the worked time within which a reading fits as well, where the zones are known. */
  private static final double FITS = 0.1;

  /** Inputs that tell how it goes at its ends. */
  private static final Set<String> ENDS =
      Set.of("speeding-up", "slowing-down", "slow-start", "slow-end", "slow-speed");

  /** m/s; UL 325 for slide operators of class I and II, as a trade body's data sheet tells it. */
  private static final double FASTEST = 0.3048;

  TravelTime() {
    super(Subject.TRAVEL, "travel-time", "time for the opening at a speed, slow ends included");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Ways.opening(),
        Input.reading("speed", Unit.METRE_PER_SECOND, "speed between the slow ends")
            .possible(0.01, 3)
            .good(0.01, 1),
        Input.reading("speeding-up", Unit.METRE_PER_SECOND_SQUARED, "acceleration at the start")
            .usually("0.3 m/s2")
            .possible(0.01, 10),
        Input.reading("slowing-down", Unit.METRE_PER_SECOND_SQUARED, "deceleration")
            .usually("0.3 m/s2")
            .possible(0.01, 10),
        Input.reading("slow-start", Unit.METRE, "slow zone that it begins with")
            .usually("0 m")
            .possible(0, 10),
        Input.reading("slow-end", Unit.METRE, "slow zone that it ends with")
            .usually("0.3 m")
            .possible(0, 10),
        Input.reading("slow-speed", Unit.METRE_PER_SECOND, "speed in the slow zones")
            .usually("0.1 m/s")
            .possible(0.005, 1),
        Input.reading("measured", Unit.SECOND, "time by the stopwatch")
            .possible(0.1, 3600)
            .mayBeLeftOut());
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("time", Unit.SECOND, "time of the run"),
        Output.reading("usual-low", Unit.SECOND, "usual, from"),
        Output.reading("usual-high", Unit.SECOND, "usual, to"),
        Output.reading("mean-speed", Unit.METRE_PER_SECOND, "speed on average"));
  }

  @Override
  public String formula() {
    return "each piece by uniform acceleration: zones at slow speed, ramps (v2^2 - v1^2)/(2 a), the"
        + " rest at full speed; without zones D/v + (v/2)(1/a + 1/d), or sqrt(2 D (1/a + 1/d)) if D is"
        + " too short; usual: D/v + 2 s to D/v + 6 s";
  }

  @Override
  public String validity() {
    return "A run without a reversal, which ends from slow speed at once. The usual range is what an"
        + " interview expects of a gate whose zones nobody knows.";
  }

  @Override
  public String source() {
    return "uniform acceleration; 2 s to 6 s for the slow ends common practice; 0.3048 m/s (1 ft/s)"
        + " for slide operators of class I and II: UL 325 as a trade body's data sheet tells it";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The speed a gate may have is for UL 325 or EN 12453 and the force test, not for the"
            + " stopwatch.");
  }

  @Override
  public List<Note> notes() {
    return List.of(Cautions.MOVING_LEAF);
  }

  @Override
  protected Results work(Entries entries) {
    double opening = entries.in("opening", Unit.METRE);
    double speed = entries.in("speed", Unit.METRE_PER_SECOND);
    double time = time(entries);
    Range usual = Travel.usualTime(opening, speed);
    return new Results()
        .with("time", time, Unit.SECOND)
        .with("usual-low", usual.low(), Unit.SECOND)
        .with("usual-high", usual.high(), Unit.SECOND)
        .with("mean-speed", opening / time, Unit.METRE_PER_SECOND);
  }

  private static double time(Entries entries) {
    boolean zones =
        entries.in("slow-start", Unit.METRE) > 0 || entries.in("slow-end", Unit.METRE) > 0;
    if (zones
        && entries.in("slow-speed", Unit.METRE_PER_SECOND)
            >= entries.in("speed", Unit.METRE_PER_SECOND)) {
      throw new InputException(
          "slow-speed must be below speed. Without slow zones: slow-start=0 m slow-end=0 m.");
    }
    try {
      return new TravelProfile(
              entries.in("opening", Unit.METRE),
              entries.in("speed", Unit.METRE_PER_SECOND),
              entries.in("speeding-up", Unit.METRE_PER_SECOND_SQUARED),
              entries.in("slowing-down", Unit.METRE_PER_SECOND_SQUARED),
              entries.in("slow-start", Unit.METRE),
              entries.in("slow-end", Unit.METRE),
              entries.in("slow-speed", Unit.METRE_PER_SECOND))
          .time();
    } catch (IllegalArgumentException e) {
      throw new InputException(
          "Slow zones and ramps take more room than there is at these speeds. Give shorter zones,"
              + " a lower speed, or slow-start=0 m slow-end=0 m.");
    }
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    Meaning meaning = timed(entries, results);
    double speed = entries.in("speed", Unit.METRE_PER_SECOND);
    return speed > FASTEST
        ? meaning.and(
            both(speed, Unit.METRE_PER_SECOND, Unit.FOOT_PER_SECOND)
                + " is more than the 1 ft/s (0.305 m/s) of slide operators of class I and II.")
        : meaning;
  }

  private static Meaning timed(Entries entries, Results results) {
    double time = results.in("time", Unit.SECOND);
    if (!entries.has("measured")) {
      return Meaning.of(
          "The run should take "
              + tell(time, Unit.SECOND)
              + "; a run that is clearly longer is short of voltage or drags.");
    }
    double measured = entries.in("measured", Unit.SECOND);
    Range usual =
        new Range(results.in("usual-low", Unit.SECOND), results.in("usual-high", Unit.SECOND));
    Range fits =
        zonesKnown(entries)
            ? new Range(
                Math.min(usual.low(), time * (1 - FITS)), Math.max(usual.high(), time * (1 + FITS)))
            : usual;
    String range = tell(fits.low(), Unit.SECOND) + " to " + tell(fits.high(), Unit.SECOND);
    String both = tell(measured, Unit.SECOND) + ", worked out " + tell(time, Unit.SECOND);
    if (measured > fits.high()) {
      return Meaning.of(
          "Too slow, " + range + " are usual: " + both + ".",
          "Read the motor's voltage while it runs: if it is low, look at batteries and supply; if"
              + " it is right, at leaf and gearbox.");
    }
    if (measured < fits.low()) {
      return Meaning.of(
          "Faster than the usual " + range + ": " + both + ".",
          "Maybe a slow zone is missing: see that the leaf slows before both ends, and test the"
              + " force there.");
    }
    return Meaning.of("The gate runs as it should, " + range + " are usual: " + both + ".");
  }

  /** Whether somebody gave a zone or a ramp of this gate. */
  private static boolean zonesKnown(Entries entries) {
    return entries.all().stream().anyMatch(g -> !g.usual() && ENDS.contains(g.input().id()));
  }
}
