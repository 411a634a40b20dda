package yett.worksheet.battery;

import yett.calculation.BatteryCapacity;
import yett.quantity.Unit;
import yett.worksheet.Subject;
import yett.worksheet.Values;
import yett.worksheet.Worksheet;

/**
 * Time for which a battery supplies a steady current: t = H (C/(I H))^k, with the capacity that
 * temperature, age and charge leave. Source: {@link BatteryCapacity#runtime}.
 */
final class BatteryRuntime extends Worksheet {
  BatteryRuntime() {
    super(Subject.BATTERY, "battery-runtime", "how long batteries carry a steady current");
    asks(
        Battery.capacity(),
        reading("current", Unit.AMPERE, "steady current drawn").possible(0.001, 500),
        Battery.charge(),
        Battery.temperature(),
        Battery.age(),
        Battery.life(),
        Battery.exponent(),
        reading("rated-time", Unit.HOUR, "time to which the printed capacity belongs")
            .usually("20 h")
            .possible(1, 100));
    refuses(v -> Battery.left(v) <= 0, Battery.NOTHING_LEFT);
    remarks(
        v -> v.of("current") > v.of("capacity"),
        "More than 1 A for each Ah is beyond Peukert's law; it will last less than this.");
    tells(
        number("runtime", Unit.HOUR, "runtime").by(BatteryRuntime::hours),
        number("given", Unit.AMPERE_HOUR, "charge it gives")
            .by(v -> v.of("runtime") * v.of("current")),
        number("left", Unit.PERCENT, "left by age and charge").by(v -> 100 * Battery.left(v)),
        number("cold", Unit.PERCENT, "capacity at temperature")
            .by(v -> 100 * BatteryCapacity.atTemperature(Battery.held(v), hours(v))));
    formula(
        "t = H (C/(I H))^k, not more than C/I; C = rated x charge x (1 - 0.2 age/life) x capacity"
            + " at temperature; H rated time, I current, k Peukert exponent");
    validity(
        "Constant current from C/20 to C, to the end voltage of the data sheet. A pair in series"
            + " has the capacity of one block. Age is a rule of thumb: a test tells more"
            + " (battery-capacity).");
    source(
        "Peukert's law in the form with the rated time; capacity by temperature from battery data"
            + " sheets; 80 % at the end of design life after IEEE 450 and 1188, straight line in"
            + " between from common practice");
    lastWord(Battery.DATA_SHEET);
    says(
        "At {current typed} it gives {given} of the printed {capacity} before the controller cuts"
            + " out.",
        "A gate that stops much sooner has worn or uncharged batteries.");
  }

  private static double hours(Values v) {
    return BatteryCapacity.runtime(
        v.of("capacity"),
        v.of("rated-time"),
        v.of("current"),
        v.of("peukert"),
        Battery.left(v),
        Battery.held(v));
  }
}
