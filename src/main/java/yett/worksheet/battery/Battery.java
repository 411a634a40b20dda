package yett.worksheet.battery;

import yett.calculation.BatteryCapacity;
import yett.quantity.Unit;
import yett.worksheet.Input;
import yett.worksheet.Note;
import yett.worksheet.Values;

/** Inputs that several battery calculations share. */
final class Battery {
  static final Note SHORT_CIRCUIT =
      Note.warning(
          "A battery drives over a thousand amperes through a tool or a ring. Burns, acid,"
              + " explosion. No jewellery, insulated tools, eye protection, no flame or spark.");
  static final String DATA_SHEET =
      "The data sheet of the batteries takes precedence: types differ. Replace blocks"
          + " in pairs, of one kind and date.";

  static final String NOTHING_LEFT =
      "By the rule of thumb, batteries of that age no longer hold any charge; test"
          + " them, or give their age as 0 and their capacity as measured.";

  private Battery() {}

  static Input capacity() {
    return Input.reading("capacity", Unit.AMPERE_HOUR, "capacity printed on each block")
        .possible(0.5, 500);
  }

  static Input temperature() {
    return Input.reading("battery-temperature", Unit.CELSIUS, "temperature of the battery")
        .usually("25 degC")
        .possible(-40, 70)
        .good(-10, 40);
  }

  static Input age() {
    return Input.reading("age", Unit.YEAR, "age of the batteries")
        .usually("0 yr")
        .possible(0, 30)
        .good(0, 10);
  }

  static Input life() {
    return Input.reading("design-life", Unit.YEAR, "design life of the kind, at 25 degC")
        .usually("5 yr")
        .possible(1, 25);
  }

  static Input charge() {
    return Input.reading("charge", Unit.PERCENT, "state of charge to begin with")
        .usually("100 %")
        .possible(1, 100);
  }

  static Input exponent() {
    return Input.reading(
            "peukert", Unit.ONE, "Peukert exponent; AGM 1.05 to 1.15, flooded 1.2 to 1.6")
        .usually("1.15")
        .possible(1, 2)
        .good(1.05, 1.6);
  }

  /**
   * Fraction of the rated capacity that age and charge leave; undefined where {@link #NOTHING_LEFT}
   * holds.
   */
  static double left(Values v) {
    return BatteryCapacity.aged(v.of("age"), v.of("design-life"), 25) * v.fraction("charge");
  }

  /**
   * The temperature (degC), raised to the low end of the table if it is below; the input's remark
   * says so.
   */
  static double held(Values v) {
    return Math.min(v.of("battery-temperature"), 40);
  }
}
