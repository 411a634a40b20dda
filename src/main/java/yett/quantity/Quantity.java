package yett.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A kind of physical quantity. The program keeps every number in the quantity's {@linkplain
 * #canonical() canonical unit}; other units appear only where people type and read.
 */
public enum Quantity {
  LENGTH("a length", "190 mm or 7 1/2 in"),
  VOLTAGE("a voltage", "24.3 V"),
  CURRENT("a current", "5.8 A"),
  RESISTANCE("a resistance", "0.4 ohm or 8.2 kohm"),
  TEMPERATURE("a temperature", "21 degC or 70 degF"),
  TIME("a time", "18 s or 1.5 min"),
  FORCE("a force", "150 N or 34 lbf"),
  MASS("a mass", "400 kg or 880 lb"),
  SPEED("a speed", "0.3 m/s or 1 ft/s"),
  ANGLE("an angle", "2.5 deg"),
  RATIO("a ratio", "3 %"),
  COUNT("a count", "12"),
  POWER("a power", "350 W"),
  CAPACITY("a capacity", "18 Ah"),
  ENERGY("an energy", "20 J or 55 Wh"),
  ACCELERATION("an acceleration", "0.5 m/s2"),
  FREQUENCY("a frequency", "60 kHz"),
  INDUCTANCE("an inductance", "75 uH"),
  RESISTIVITY("a resistivity", "100 ohm m");

  private final String phrase;
  private final String example;

  Quantity(String phrase, String example) {
    this.phrase = phrase;
    this.example = example;
  }

  /**
   * The quantity of that name, in lower case as cards write it.
   *
   * @throws IllegalArgumentException for any other name; the message suggests the nearest
   */
  public static Quantity named(String name) {
    return Arrays.stream(values())
        .filter(quantity -> quantity.label().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(unknown(name)));
  }

  private static String unknown(String name) {
    List<String> names = Arrays.stream(values()).map(Quantity::label).toList();
    return "unknown quantity "
        + Spelling.quoted(name)
        + "; "
        + Spelling.didYouMean(name, names)
            .orElseGet(() -> "use one of " + String.join(", ", names) + ".");
  }

  /** The name as cards write it: {@code length}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The unit in which the program keeps this quantity. */
  public Unit canonical() {
    return switch (this) {
      case LENGTH -> Unit.MILLIMETRE;
      case VOLTAGE -> Unit.VOLT;
      case CURRENT -> Unit.AMPERE;
      case RESISTANCE -> Unit.OHM;
      case TEMPERATURE -> Unit.CELSIUS;
      case TIME -> Unit.SECOND;
      case FORCE -> Unit.NEWTON;
      case MASS -> Unit.KILOGRAM;
      case SPEED -> Unit.METRE_PER_SECOND;
      case ANGLE -> Unit.DEGREE;
      case RATIO -> Unit.PERCENT;
      case COUNT -> Unit.ONE;
      case POWER -> Unit.WATT;
      case CAPACITY -> Unit.AMPERE_HOUR;
      case ENERGY -> Unit.JOULE;
      case ACCELERATION -> Unit.METRE_PER_SECOND_SQUARED;
      case FREQUENCY -> Unit.HERTZ;
      case INDUCTANCE -> Unit.MICROHENRY;
      case RESISTIVITY -> Unit.OHM_METRE;
    };
  }

  /**
   * A value as a screen shows it: four significant digits at most, whole digits never rounded away,
   * the same in every locale ({@code 24.3 V}, {@code 0.4 ohm}, {@code 190 mm}). What is shown can
   * be typed back.
   *
   * @param canonical the value in this quantity's canonical unit
   * @throws IllegalArgumentException if the value is not finite, or the unit is another quantity's
   */
  public String show(double canonical, Unit shownUnit) {
    String figures = PlainNumber.of(requireOwn(shownUnit).fromCanonical(canonical));
    return shownUnit.symbol().isEmpty() ? figures : figures + " " + shownUnit.symbol();
  }

  Unit requireOwn(Unit unit) {
    if (unit.quantity() != this) {
      throw new IllegalArgumentException(
          unit + " measures " + unit.quantity().label() + ", not " + label());
    }
    return unit;
  }

  String phrase() {
    return phrase;
  }

  /** An example of a reading as it may be typed, in several units where people use several. */
  public String example() {
    return example;
  }

  String request(Unit shownUnit, String such) {
    String unit =
        switch (shownUnit) {
          case ONE -> "";
          case INCH -> " in inches"; // "in in" would look like a typing mistake
          default -> " in " + shownUnit.symbol();
        };
    return "this asks for " + phrase + unit + ", e.g. " + such + ".";
  }

  /** The symbols of all units of this quantity as a list for a sentence: {@code V, mV or kV}. */
  String unitList() {
    List<String> symbols = Unit.of(this).stream().map(Unit::symbol).toList();
    int last = symbols.size() - 1;
    return last == 0
        ? symbols.get(0)
        : symbols.stream().limit(last).collect(Collectors.joining(", "))
            + " or "
            + symbols.get(last);
  }
}
