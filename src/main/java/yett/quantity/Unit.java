package yett.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.UnitConverter;
import systems.uom.common.USCustomary;
// The library's catalogue of units; in this file it hides our own Units, which is a preference.
import tech.units.indriya.unit.Units;

/**
 * A unit a reading can be typed or shown in, with the spellings people use for it. The first
 * spelling is the symbol that screens show. Factors come from the units library and agree with NIST
 * SP 811.
 */
public enum Unit {
  MILLIMETRE(Quantity.LENGTH, MILLI(Units.METRE), "mm", "millimetre", "millimeter"),
  CENTIMETRE(Quantity.LENGTH, CENTI(Units.METRE), "cm", "centimetre", "centimeter"),
  METRE(Quantity.LENGTH, Units.METRE, "m", "metre", "meter"),
  INCH(Quantity.LENGTH, USCustomary.INCH, "in", "inch", "inches", "\"", "''"),
  FOOT(Quantity.LENGTH, USCustomary.FOOT, "ft", "foot", "feet", "'"),

  VOLT(Quantity.VOLTAGE, Units.VOLT, "V", "volt", "Vdc", "Vac", "V dc", "V ac"),
  MILLIVOLT(Quantity.VOLTAGE, MILLI(Units.VOLT), "mV", "millivolt"),
  KILOVOLT(Quantity.VOLTAGE, KILO(Units.VOLT), "kV", "kilovolt"),

  AMPERE(Quantity.CURRENT, Units.AMPERE, "A", "amp", "ampere", "Adc", "Aac", "A dc", "A ac"),
  MILLIAMPERE(Quantity.CURRENT, MILLI(Units.AMPERE), "mA", "milliamp", "milliampere"),

  OHM(Quantity.RESISTANCE, Units.OHM, "ohm", "Ω"),
  MILLIOHM(Quantity.RESISTANCE, MILLI(Units.OHM), "mohm", "mΩ", "milliohm"),
  KILOHM(Quantity.RESISTANCE, KILO(Units.OHM), "kohm", "kΩ", "kilohm", "kiloohm"),
  MEGOHM(Quantity.RESISTANCE, MEGA(Units.OHM), "Mohm", "MΩ", "megohm", "megaohm"),
  GIGOHM(Quantity.RESISTANCE, GIGA(Units.OHM), "Gohm", "GΩ", "gigohm", "gigaohm"),

  CELSIUS(Quantity.TEMPERATURE, Units.CELSIUS, "degC", "°C", "C", "deg C", "° C", "celsius"),
  FAHRENHEIT(
      Quantity.TEMPERATURE,
      USCustomary.FAHRENHEIT,
      "degF",
      "°F",
      "F",
      "deg F",
      "° F",
      "fahrenheit"),

  SECOND(Quantity.TIME, Units.SECOND, "s", "sec", "second"),
  MILLISECOND(Quantity.TIME, MILLI(Units.SECOND), "ms", "msec", "millisecond"),
  MINUTE(Quantity.TIME, Units.MINUTE, "min", "minute"),
  HOUR(Quantity.TIME, Units.HOUR, "h", "hr", "hrs", "hour"),
  DAY(Quantity.TIME, Units.DAY, "d", "day"),
  YEAR(Quantity.TIME, Units.DAY.multiply(365.25), "yr", "year"),

  NEWTON(Quantity.FORCE, Units.NEWTON, "N", "newton"),
  KILONEWTON(Quantity.FORCE, KILO(Units.NEWTON), "kN", "kilonewton"),
  POUND_FORCE(Quantity.FORCE, standardWeight(USCustomary.POUND), "lbf", "pound-force"),
  KILOGRAM_FORCE(Quantity.FORCE, standardWeight(Units.KILOGRAM), "kgf", "kilogram-force"),

  KILOGRAM(Quantity.MASS, Units.KILOGRAM, "kg", "kgs", "kilo", "kilogram"),
  GRAM(Quantity.MASS, Units.GRAM, "g", "gram"),
  POUND(Quantity.MASS, USCustomary.POUND, "lb", "lbs", "pound"),

  METRE_PER_SECOND(Quantity.SPEED, Units.METRE_PER_SECOND, "m/s"),
  MILLIMETRE_PER_SECOND(Quantity.SPEED, MILLI(Units.METRE).divide(Units.SECOND), "mm/s"),
  METRE_PER_MINUTE(Quantity.SPEED, Units.METRE.divide(Units.MINUTE), "m/min"),
  KILOMETRE_PER_HOUR(Quantity.SPEED, Units.KILOMETRE_PER_HOUR, "km/h", "kph"),
  FOOT_PER_SECOND(Quantity.SPEED, USCustomary.FOOT.divide(Units.SECOND), "ft/s", "fps"),
  FOOT_PER_MINUTE(Quantity.SPEED, USCustomary.FOOT.divide(Units.MINUTE), "ft/min", "fpm"),
  MILE_PER_HOUR(Quantity.SPEED, USCustomary.MILE_PER_HOUR, "mph"),

  DEGREE(Quantity.ANGLE, USCustomary.DEGREE_ANGLE, "deg", "°", "degree"),

  PERCENT(Quantity.RATIO, Units.PERCENT, "%", "percent", "pct"),

  // The library's own ONE sits in a class whose annotations this build cannot see.
  ONE(Quantity.COUNT, Units.PERCENT.multiply(100), ""),

  WATT(Quantity.POWER, Units.WATT, "W", "watt"),
  KILOWATT(Quantity.POWER, KILO(Units.WATT), "kW", "kilowatt"),
  HORSEPOWER(Quantity.POWER, USCustomary.HORSEPOWER, "hp", "horsepower"),

  AMPERE_HOUR(Quantity.CAPACITY, Units.AMPERE.multiply(Units.HOUR), "Ah", "A h", "A·h", "amp-hour"),
  MILLIAMPERE_HOUR(
      Quantity.CAPACITY, MILLI(Units.AMPERE).multiply(Units.HOUR), "mAh", "mA h", "mA·h"),

  JOULE(Quantity.ENERGY, Units.JOULE, "J", "joule"),
  WATT_HOUR(Quantity.ENERGY, Units.WATT.multiply(Units.HOUR), "Wh", "W h", "W·h", "watt-hour"),
  KILOWATT_HOUR(Quantity.ENERGY, KILO(Units.WATT).multiply(Units.HOUR), "kWh", "kW h", "kW·h"),
  FOOT_POUND(
      Quantity.ENERGY,
      standardWeight(USCustomary.POUND).multiply(USCustomary.FOOT),
      "ft lbf",
      "ft·lbf",
      "ft lb",
      "foot-pound"),

  METRE_PER_SECOND_SQUARED(Quantity.ACCELERATION, Units.METRE_PER_SQUARE_SECOND, "m/s2", "m/s²"),
  FOOT_PER_SECOND_SQUARED(
      Quantity.ACCELERATION,
      USCustomary.FOOT.divide(Units.SECOND).divide(Units.SECOND),
      "ft/s2",
      "ft/s²"),

  HERTZ(Quantity.FREQUENCY, Units.HERTZ, "Hz", "hertz"),
  KILOHERTZ(Quantity.FREQUENCY, KILO(Units.HERTZ), "kHz", "kilohertz"),

  MICROHENRY(Quantity.INDUCTANCE, MICRO(Units.HENRY), "uH", "µH", "μH", "microhenry"),
  MILLIHENRY(Quantity.INDUCTANCE, MILLI(Units.HENRY), "mH", "millihenry"),

  OHM_METRE(
      Quantity.RESISTIVITY,
      Units.OHM.multiply(Units.METRE),
      "ohm m",
      "ohm·m",
      "Ωm",
      "Ω m",
      "Ω·m",
      "ohm-m"),
  OHM_CENTIMETRE(
      Quantity.RESISTIVITY,
      Units.OHM.multiply(CENTI(Units.METRE)),
      "ohm cm",
      "ohm·cm",
      "Ωcm",
      "Ω cm",
      "ohm-cm");

  private final Quantity quantity;
  private final javax.measure.Unit<?> measure;
  private final List<String> spellings;

  Unit(Quantity quantity, javax.measure.Unit<?> measure, String... spellings) {
    this.quantity = quantity;
    this.measure = measure;
    this.spellings = List.of(spellings);
  }

  /** The force that standard gravity, 9.806 65 m/s2, exerts on a mass. */
  private static javax.measure.Unit<?> standardWeight(javax.measure.Unit<?> mass) {
    return mass.multiply(Units.METRE_PER_SQUARE_SECOND).multiply(9.80665);
  }

  /**
   * The unit of that spelling, whatever it measures. Upper and lower case may be mixed except where
   * they tell a thousandth from a million ({@code mV}, {@code Mohm}).
   */
  public static Optional<Unit> find(String spelling) {
    return Spellings.find(spelling);
  }

  /**
   * The unit of that spelling.
   *
   * @throws ReadingException if there is none; the message suggests the nearest
   */
  public static Unit parse(String spelling) {
    return find(spelling)
        .orElseThrow(
            () ->
                new ReadingException(
                    Spelling.quoted(spelling)
                        + " is no unit known here; "
                        + Spelling.didYouMean(spelling, Spellings.all(List.of(values())))
                            .orElse("write it like mm, V, A, ohm, degC, s, N, kg, m/s or %.")));
  }

  static List<Unit> of(Quantity quantity) {
    return Arrays.stream(values()).filter(unit -> unit.quantity == quantity).toList();
  }

  public Quantity quantity() {
    return quantity;
  }

  /** The spelling that screens show and cards write; empty for a count. */
  public String symbol() {
    return spellings.get(0);
  }

  /** A value in this unit, brought to the quantity's canonical unit. */
  public double toCanonical(double value) {
    return converter(this, quantity.canonical()).convert(value);
  }

  /** A value in the quantity's canonical unit, brought to this unit. */
  public double fromCanonical(double value) {
    return converter(quantity.canonical(), this).convert(value);
  }

  /**
   * A difference between two values in this unit, brought to the canonical unit. It parts from
   * {@link #toCanonical} for temperatures: a tolerance of 9 degF is one of 5 degC.
   */
  public double differenceToCanonical(double difference) {
    return quantity == Quantity.TEMPERATURE && this != quantity.canonical()
        ? toCanonical(difference) - toCanonical(0)
        : toCanonical(difference);
  }

  List<String> spellings() {
    return spellings;
  }

  private static UnitConverter converter(Unit from, Unit to) {
    try {
      return from.measure.getConverterToAny(to.measure);
    } catch (IncommensurableException e) {
      throw new IllegalStateException(from + " does not convert to " + to, e);
    }
  }
}
