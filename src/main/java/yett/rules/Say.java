package yett.rules;

import yett.quantity.Quantity;
import yett.quantity.Unit;

/** Formats numbers for sentences in rules, no finer than a technician needs them. */
public final class Say {
  private Say() {}

  /** A length in mm as metres. */
  public static String metres(double millimetres) {
    return Quantity.LENGTH.show(millimetres, Unit.METRE);
  }

  /** A length in mm, rounded to the millimetre. */
  public static String millimetres(double millimetres) {
    return Quantity.LENGTH.show(Math.round(millimetres), Unit.MILLIMETRE);
  }

  /** Rounded to a tenth of a second. */
  public static String seconds(double seconds) {
    return tenths(seconds) + " s";
  }

  /** Rounded to a tenth of a volt. */
  public static String volts(double volts) {
    return Quantity.VOLTAGE.show(tenths(volts), Unit.VOLT);
  }

  /** Rounded to a tenth of an ampere. */
  public static String amperes(double amperes) {
    return Quantity.CURRENT.show(tenths(amperes), Unit.AMPERE);
  }

  /** Rounded to the newton. */
  public static String newtons(double newtons) {
    return Quantity.FORCE.show(Math.round(newtons), Unit.NEWTON);
  }

  public static String kilograms(double kilograms) {
    return Quantity.MASS.show(kilograms, Unit.KILOGRAM);
  }

  public static String degrees(double celsius) {
    return Quantity.TEMPERATURE.show(celsius, Unit.CELSIUS);
  }

  public static String metresPerSecond(double speed) {
    return Quantity.SPEED.show(speed, Unit.METRE_PER_SECOND);
  }

  /** Rounded to a tenth of a percent. */
  public static String percent(double percent) {
    return Quantity.RATIO.show(tenths(percent), Unit.PERCENT);
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
