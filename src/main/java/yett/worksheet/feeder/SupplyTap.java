package yett.worksheet.feeder;

import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.List;
import java.util.Optional;
import yett.calculation.Range;
import yett.calculation.SupplySetting;
import yett.quantity.Unit;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * What the input setting of a supply does to its low-voltage side: Vs = Vr Vin/Vtap; behind the
 * rectifier √2 Vs less the diodes' drop with a smoothing capacitor, 0.9003 Vs as the mean without.
 * Source: {@link SupplySetting}.
 */
final class SupplyTap extends Worksheet {
  private static final double BRIDGE = 1.4;

  SupplyTap() {
    super(Subject.FEEDER, "supply-setting", "what a right or wrong input setting gives");
  }

  @Override
  public List<Input> inputs() {
    return List.of(
        Input.reading("mains", Unit.VOLT, "mains that is connected").possible(80, 500),
        Input.reading("setting", Unit.VOLT, "voltage that the selector or tap is set to")
            .possible(80, 500),
        Input.reading("secondary", Unit.VOLT, "secondary voltage on the nameplate (AC)")
            .usually("24 V")
            .possible(6, 60));
  }

  @Override
  public List<Output> outputs() {
    return List.of(
        Output.reading("ratio", Unit.PERCENT, "mains against setting"),
        Output.reading("ac", Unit.VOLT, "secondary voltage (AC)"),
        Output.reading("dc-smoothed", Unit.VOLT, "DC, smoothed, no load"),
        Output.reading("dc-plain", Unit.VOLT, "DC, not smoothed, mean"));
  }

  @Override
  public String formula() {
    return "Vs = Vr Vin/Vtap; smoothed sqrt(2) Vs - 1.4 V; without smoothing (2/pi) sqrt(2) Vs ="
        + " 0.9003 Vs";
  }

  @Override
  public String validity() {
    return "Transformer supply without load, sine wave. Above 110 % the core saturates and fuse or"
        + " winding goes first. A supply that regulates, or takes 100 to 240 V without a selector,"
        + " does not follow this.";
  }

  @Override
  public String source() {
    return "ideal transformer and rectified sine, textbook; 10 % either way and 29 V to 34 V common practice";
  }

  @Override
  public Optional<String> lastWord() {
    return Optional.of(
        "The supply's nameplate and the maker's instructions say which settings there are; changing"
            + " one is work at the mains, for an electrician.");
  }

  @Override
  public List<Note> notes() {
    return List.of(
        Note.danger(
            "Selector and taps stand beside mains terminals. Shock can kill. Isolate, lock and"
                + " prove dead before a setting is touched."));
  }

  @Override
  protected Results work(Entries entries) {
    double mains = entries.in("mains", Unit.VOLT);
    double tap = entries.in("setting", Unit.VOLT);
    double ac = SupplySetting.secondaryVoltage(entries.in("secondary", Unit.VOLT), mains, tap);
    return new Results()
        .with("ratio", 100 * mains / tap, Unit.PERCENT)
        .with("ac", ac, Unit.VOLT)
        .with("dc-smoothed", SupplySetting.rectifiedPeak(ac, BRIDGE), Unit.VOLT)
        .with("dc-plain", SupplySetting.rectifiedMean(ac), Unit.VOLT);
  }

  @Override
  protected Meaning meaning(Entries entries, Results results) {
    double ratio = results.in("ratio", Unit.PERCENT) / 100;
    double dc = results.in("dc-smoothed", Unit.VOLT);
    Range wanted = SupplySetting.CHARGING;
    String gives =
        "; a supply for that gives "
            + tell(wanted.low(), Unit.VOLT)
            + " to "
            + tell(wanted.high(), Unit.VOLT)
            + " without a load.";
    String charge =
        dc < wanted.low()
            ? "With "
                + tell(dc, Unit.VOLT)
                + " at most, and less under load, it cannot charge a 24 V pair"
                + gives
                + " Batteries run flat while everything looks alive."
            : dc > wanted.high() * Math.max(1, ratio)
                ? tell(dc, Unit.VOLT) + " is more than charging a 24 V pair asks for" + gives
                : "With up to " + tell(dc, Unit.VOLT) + " it can charge a 24 V pair.";
    boolean fits =
        SupplySetting.fits(entries.in("mains", Unit.VOLT), entries.in("setting", Unit.VOLT));
    if (!fits && ratio > 1) {
      return Meaning.of(
              "The setting is too low for this mains: "
                  + percent(ratio)
                  + " of what it is wound for.",
              "Expect a blown fuse, a burnt winding, or electronics behind it fed with too much.")
          .with(
              Note.warning(
                  "Overheated supply. Fire, burns. Leave it off until setting and winding have been"
                      + " checked."));
    }
    if (!fits) {
      return Meaning.of(
          "The setting is too high for this mains: the low side gets " + percent(ratio) + " only.",
          charge);
    }
    return Meaning.of("The setting fits the mains within a tenth.", charge);
  }
}
