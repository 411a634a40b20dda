package yett.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.UnitConverter;

/**
 * A unit in which a reading can be typed or shown, with the spellings people use for it. The first
 * spelling is the symbol on screens. Factors come from the units library and agree with NIST SP
 * 811.
 */
public enum Unit {
  MILLIMETRE(Quantity.LENGTH, "mm", "millimetre", "millimeter"),
  CENTIMETRE(Quantity.LENGTH, "cm", "centimetre", "centimeter"),
  METRE(Quantity.LENGTH, "m", "metre", "meter"),
  INCH(Quantity.LENGTH, "in", "inch", "inches", "\"", "''"),
  FOOT(Quantity.LENGTH, "ft", "foot", "feet", "'"),

  VOLT(Quantity.VOLTAGE, "V", "volt", "Vdc", "Vac", "V dc", "V ac"),
  MILLIVOLT(Quantity.VOLTAGE, "mV", "millivolt"),
  KILOVOLT(Quantity.VOLTAGE, "kV", "kilovolt"),

  AMPERE(Quantity.CURRENT, "A", "amp", "ampere", "Adc", "Aac", "A dc", "A ac"),
  MILLIAMPERE(Quantity.CURRENT, "mA", "milliamp", "milliampere"),

  OHM(Quantity.RESISTANCE, "ohm", "Ω"),
  MILLIOHM(Quantity.RESISTANCE, "mohm", "mΩ", "milliohm"),
  KILOHM(Quantity.RESISTANCE, "kohm", "kΩ", "kilohm", "kiloohm"),
  MEGOHM(Quantity.RESISTANCE, "Mohm", "MΩ", "megohm", "megaohm"),
  GIGOHM(Quantity.RESISTANCE, "Gohm", "GΩ", "gigohm", "gigaohm"),

  CELSIUS(Quantity.TEMPERATURE, "degC", "°C", "C", "deg C", "° C", "celsius"),
  FAHRENHEIT(Quantity.TEMPERATURE, "degF", "°F", "F", "deg F", "° F", "fahrenheit"),

  SECOND(Quantity.TIME, "s", "sec", "second"),
  MILLISECOND(Quantity.TIME, "ms", "msec", "millisecond"),
  MINUTE(Quantity.TIME, "min", "minute"),
  HOUR(Quantity.TIME, "h", "hr", "hrs", "hour"),
  DAY(Quantity.TIME, "d", "day"),
  YEAR(Quantity.TIME, "yr", "year"),

  NEWTON(Quantity.FORCE, "N", "newton"),
  KILONEWTON(Quantity.FORCE, "kN", "kilonewton"),
  POUND_FORCE(Quantity.FORCE, "lbf", "pound-force"),
  KILOGRAM_FORCE(Quantity.FORCE, "kgf", "kilogram-force"),

  KILOGRAM(Quantity.MASS, "kg", "kgs", "kilo", "kilogram"),
  GRAM(Quantity.MASS, "g", "gram"),
  POUND(Quantity.MASS, "lb", "lbs", "pound"),

  METRE_PER_SECOND(Quantity.SPEED, "m/s"),
  MILLIMETRE_PER_SECOND(Quantity.SPEED, "mm/s"),
  METRE_PER_MINUTE(Quantity.SPEED, "m/min"),
  KILOMETRE_PER_HOUR(Quantity.SPEED, "km/h", "kph"),
  FOOT_PER_SECOND(Quantity.SPEED, "ft/s", "fps"),
  FOOT_PER_MINUTE(Quantity.SPEED, "ft/min", "fpm"),
  MILE_PER_HOUR(Quantity.SPEED, "mph"),

  DEGREE(Quantity.ANGLE, "deg", "°", "degree"),

  PERCENT(Quantity.RATIO, "%", "percent", "pct"),

  ONE(Quantity.COUNT, ""),

  WATT(Quantity.POWER, "W", "watt"),
  KILOWATT(Quantity.POWER, "kW", "kilowatt"),
  HORSEPOWER(Quantity.POWER, "hp", "horsepower"),

  AMPERE_HOUR(Quantity.CAPACITY, "Ah", "A h", "A·h", "amp-hour"),
  MILLIAMPERE_HOUR(Quantity.CAPACITY, "mAh", "mA h", "mA·h"),

  JOULE(Quantity.ENERGY, "J", "joule"),
  WATT_HOUR(Quantity.ENERGY, "Wh", "W h", "W·h", "watt-hour"),
  KILOWATT_HOUR(Quantity.ENERGY, "kWh", "kW h", "kW·h"),
  FOOT_POUND(Quantity.ENERGY, "ft lbf", "ft·lbf", "ft lb", "foot-pound"),

  METRE_PER_SECOND_SQUARED(Quantity.ACCELERATION, "m/s2", "m/s²"),
  FOOT_PER_SECOND_SQUARED(Quantity.ACCELERATION, "ft/s2", "ft/s²"),

  HERTZ(Quantity.FREQUENCY, "Hz", "hertz"),
  KILOHERTZ(Quantity.FREQUENCY, "kHz", "kilohertz"),

  MICROHENRY(Quantity.INDUCTANCE, "uH", "µH", "μH", "microhenry"),
  MILLIHENRY(Quantity.INDUCTANCE, "mH", "millihenry"),

  OHM_METRE(Quantity.RESISTIVITY, "ohm m", "ohm·m", "Ωm", "Ω m", "Ω·m", "ohm-m"),
  OHM_CENTIMETRE(Quantity.RESISTIVITY, "ohm cm", "ohm·cm", "Ωcm", "Ω cm", "ohm-cm");

  private final Quantity quantity;
  private final List<String> spellings;
  private volatile UnitConverter toCanonical;
  private volatile UnitConverter fromCanonical;

  Unit(Quantity quantity, String... spellings) {
    this.quantity = quantity;
    this.spellings = List.of(spellings);
  }

  /**
   * The unit with this spelling, of any quantity. Case is ignored except where it distinguishes a
   * thousandth from a million ({@code mV}, {@code Mohm}).
   */
  public static Optional<Unit> find(String spelling) {
    return Spellings.find(spelling);
  }

  /**
   * The unit with this spelling, of any quantity.
   *
   * @throws ReadingException if there is none; the message suggests the nearest
   */
  public static Unit parse(String spelling) {
    return find(spelling)
        .orElseThrow(
            () ->
                new ReadingException(
                    Spelling.quoted(spelling)
                        + " is not a known unit; "
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

  /** Converts a value in this unit to the quantity's canonical unit. */
  public double toCanonical(double value) {
    if (isCanonical()) {
      return value;
    }
    if (toCanonical == null) {
      toCanonical = converter(this, quantity.canonical());
    }
    return toCanonical.convert(value);
  }

  /** Converts a value in the quantity's canonical unit to this unit. */
  public double fromCanonical(double value) {
    if (isCanonical()) {
      return value;
    }
    if (fromCanonical == null) {
      fromCanonical = converter(quantity.canonical(), this);
    }
    return fromCanonical.convert(value);
  }

  private boolean isCanonical() {
    return this == quantity.canonical();
  }

  /**
   * Converts a difference between two values in this unit to the canonical unit. It differs from
   * {@link #toCanonical} for temperatures: a tolerance of 9 degF is one of 5 degC.
   */
  public double differenceToCanonical(double difference) {
    return quantity == Quantity.TEMPERATURE && !isCanonical()
        ? toCanonical(difference) - toCanonical(0)
        : toCanonical(difference);
  }

  List<String> spellings() {
    return spellings;
  }

  private static UnitConverter converter(Unit from, Unit to) {
    try {
      return LibraryUnits.of(from).getConverterToAny(LibraryUnits.of(to));
    } catch (IncommensurableException e) {
      throw new IllegalStateException(from + " does not convert to " + to, e);
    }
  }
}
