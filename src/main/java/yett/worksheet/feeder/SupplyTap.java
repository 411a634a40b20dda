package yett.worksheet.feeder;

import yett.calculation.SupplySetting;
import yett.quantity.Unit;
import yett.worksheet.Note;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * The output of a supply for an input voltage and tap: Vs = Vr Vin/Vtap; behind the rectifier √2 Vs
 * less the diodes' drop with a smoothing capacitor, 0.9003 Vs as the mean without. Source: {@link
 * SupplySetting}.
 */
final class SupplyTap extends Worksheet {
  /** Voltage drop (V) of a bridge rectifier. */
  private static final double BRIDGE = 1.4;

  SupplyTap() {
    super(Subject.FEEDER, "supply-setting", "what a right or wrong input setting gives");
    asks(
        reading("mains", Unit.VOLT, "mains that is connected").possible(80, 500),
        reading("setting", Unit.VOLT, "voltage that the selector or tap is set to")
            .possible(80, 500),
        reading("secondary", Unit.VOLT, "secondary voltage on the nameplate (AC)")
            .usually("24 V")
            .possible(6, 60));
    tells(
        number("ratio", Unit.PERCENT, "mains against setting")
            .by(v -> 100 * v.of("mains") / v.of("setting")),
        number("ac", Unit.VOLT, "secondary voltage (AC)")
            .by(
                v ->
                    SupplySetting.secondaryVoltage(
                        v.of("secondary"), v.of("mains"), v.of("setting"))),
        number("dc-smoothed", Unit.VOLT, "DC, smoothed, no load")
            .by(v -> SupplySetting.rectifiedPeak(v.of("ac"), BRIDGE)),
        number("dc-plain", Unit.VOLT, "DC, not smoothed, mean")
            .by(v -> SupplySetting.rectifiedMean(v.of("ac"))));
    works(
        step("least", Unit.VOLT).by(v -> SupplySetting.CHARGING.low()),
        step("most", Unit.VOLT).by(v -> SupplySetting.CHARGING.high()));
    formula(
        "Vs = Vr Vin/Vtap; smoothed sqrt(2) Vs - 1.4 V; without smoothing (2/pi) sqrt(2) Vs ="
            + " 0.9003 Vs");
    validity(
        "Transformer supply without load, sine wave. Above 110 % the core saturates and"
            + " fuse or winding takes precedence. A supply that regulates, or takes 100 to 240"
            + " V without a selector, does not follow this.");
    source(
        "ideal transformer and rectified sine, textbook; 10 % either way and 29 V to 34 V common"
            + " practice");
    lastWord(
        "The supply's nameplate and the maker's instructions say which settings there are; changing"
            + " one is done locked off and dead, by whom the firm names.");
    notes(
        Note.danger(
            "Selector and taps are next to mains terminals. Shock can kill. Isolate, lock and"
                + " prove dead before a setting is touched."));
    says(
        when(
                SupplyTap::tooLow,
                "The setting is too low for this mains: {ratio} of what it is wound for.",
                "Expect a blown fuse, a burnt winding, or electronics behind it fed with too much.")
            .warning(
                Note.warning(
                    "Overheated supply. Fire, burns. Leave it off until setting and winding have"
                        + " been checked.")),
        when(
            v -> !fits(v),
            "The setting is too high for this mains: the low side gets {ratio} only."),
        otherwise("The setting fits the mains within a tenth."));
    says(
        when(SupplyTap::tooLow),
        when(
            v -> v.of("dc-smoothed") < v.of("least"),
            "With {dc-smoothed} at most, and less under load, it cannot charge a 24 V pair; a"
                + " supply for that gives {least} to {most} without a load. Batteries run flat"
                + " while everything looks alive."),
        when(
            v -> v.of("dc-smoothed") > v.of("most") * Math.max(1, v.fraction("ratio")),
            "{dc-smoothed} is more than charging a 24 V pair asks for; a supply for that gives"
                + " {least} to {most} without a load."),
        otherwise("With up to {dc-smoothed} it can charge a 24 V pair."));
  }

  private static boolean fits(Values v) {
    return SupplySetting.fits(v.of("mains"), v.of("setting"));
  }

  private static boolean tooLow(Values v) {
    return !fits(v) && v.of("ratio") > 100;
  }
}
