package yett.worksheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.calculation.InstrumentUncertainty;
import yett.knowledge.Names;
import yett.quantity.Quantity;
import yett.quantity.Reading;
import yett.quantity.ReadingException;
import yett.quantity.Slope;
import yett.quantity.Unit;

/** Reads the text that a person types for an input. */
public final class InputReader {
  private static final Pattern WITH_LIMITS = Pattern.compile("(.*?)(?:±|\\+ ?/? ?[-–−])(.*)");
  private static final int LONGEST = 300;

  /** A number without anything that could be a unit. */
  private static final Pattern BARE =
      Pattern.compile("[-+\\d.,/ ¼½¾⅛⅜⅝⅞]*\\d[-+\\d.,/ ¼½¾⅛⅜⅝⅞]*(?:[eE][-+]?\\d+)?\\s*");

  private static final Map<Unit, Unit> RIVALS =
      Map.of(Unit.METRE, Unit.FOOT, Unit.KILOGRAM, Unit.POUND, Unit.CELSIUS, Unit.FAHRENHEIT);

  private InputReader() {}

  /**
   * Reads a line such as {@code 24.3 V}, {@code 24.3 V +- 0.2 V} or {@code 24.3 V ± 0.8 %}. The
   * figure after the sign is a limit of error, as in data sheets, within which the true value lies
   * with equal chance anywhere: the standard uncertainty is the limit divided by √3 (JCGM 100,
   * 4.3.7).
   *
   * @throws InputException if it is not valid
   */
  public static Given read(Input input, String typed) {
    String text = typed.strip();
    if (text.length() > LONGEST) {
      throw new InputException("That is too long for " + input.id() + ".");
    }
    try {
      return switch (input.kind()) {
        case READING -> reading(input, text);
        case WHOLE -> whole(input, text);
        case CHOICE -> choice(input, text);
        case FILE -> new Given(input, text, false, 0, 0, input.unit());
      };
    } catch (ReadingException e) {
      throw new InputException(e.getMessage());
    }
  }

  /** The usual value of an input, which must have one. */
  static Given usual(Input input) {
    Given given = read(input, input.usual().orElseThrow());
    return new Given(
        input, given.typed(), true, given.value(), given.standardUncertainty(), given.unit());
  }

  private static Given reading(Input input, String text) {
    Matcher limits = WITH_LIMITS.matcher(text);
    boolean has = limits.matches();
    String main = has ? limits.group(1) : text;
    Reading reading =
        slope(input, main).orElseGet(() -> Reading.parse(main, input.quantity(), input.unit()));
    requirePossible(input, reading.value());
    double u = has ? uncertainty(input, limits.group(2).strip(), reading) : 0;
    return new Given(input, text, false, reading.value(), u, reading.unit());
  }

  private static double uncertainty(Input input, String text, Reading reading) {
    boolean relative = text.endsWith("%") && reading.quantity() != Quantity.RATIO;
    if (relative && reading.quantity() == Quantity.TEMPERATURE) {
      throw new InputException("Give the limits of a temperature in degrees, not in percent.");
    }
    double limit =
        relative
            ? Math.abs(reading.value())
                * Reading.parse(text, Quantity.RATIO, Unit.PERCENT).value()
                / 100
            : slope(input, text)
                .orElseGet(() -> Reading.parseDifference(text, reading.quantity(), reading.unit()))
                .value();
    if (limit < 0) {
      throw new InputException("Limits of error have no sign of their own; type +- once.");
    }
    return InstrumentUncertainty.standard(limit);
  }

  private static Optional<Reading> slope(Input input, String text) {
    return input.slope() ? Slope.parse(text) : Optional.empty();
  }

  /**
   * Refuses text without a unit where another unit is as likely: feet for metres, pounds for
   * kilograms, degF for degC. For lines typed without a prompt that names the unit.
   *
   * @throws InputException if the unit is not clear
   */
  static void requireUnit(Input input, String typed) {
    Unit rival = RIVALS.get(input.unit());
    Matcher limits = WITH_LIMITS.matcher(typed.strip());
    String main = limits.matches() ? limits.group(1) : typed.strip();
    if (input.kind() != Input.Kind.READING || rival == null || !BARE.matcher(main).matches()) {
      return;
    }
    double one = Reading.parse(main, input.quantity(), input.unit()).value();
    double other = Reading.parse(main, input.quantity(), rival).value();
    boolean bothPossible =
        input.possible().contains(input.unit().fromCanonical(one))
            && input.possible().contains(input.unit().fromCanonical(other));
    if (one != other && bothPossible) {
      String number = main.strip() + " ";
      throw new InputException(
          "\""
              + main.strip()
              + "\" has no unit: "
              + number
              + input.unit().symbol()
              + " or "
              + number
              + rival.symbol()
              + "? Type it with its unit.");
    }
  }

  private static Given whole(Input input, String text) {
    Reading reading = Reading.parse(text, Quantity.COUNT, Unit.ONE);
    if (reading.value() != Math.rint(reading.value())) {
      throw new InputException("\"" + text + "\" is not a whole number, as " + input.id() + " is.");
    }
    requirePossible(input, reading.value());
    return new Given(input, text, false, reading.value(), 0, Unit.ONE);
  }

  private static void requirePossible(Input input, double value) {
    double own = input.unit().fromCanonical(value);
    if (!input.possible().contains(own)) {
      throw new InputException(
          input.show(value)
              + " is not possible here; the range is "
              + input.inWords(input.possible()).orElse("")
              + ". Check the unit and the decimal point.");
    }
  }

  private static Given choice(Input input, String text) {
    Choice chosen =
        input.choices().stream()
            .filter(c -> c.isMeantBy(text))
            .findFirst()
            .or(() -> bySpelling(input, text))
            .or(() -> byNumber(input, text))
            .orElseThrow(() -> new InputException(unknown(input, text)));
    return new Given(input, text, false, input.choices().indexOf(chosen), 0, Unit.ONE);
  }

  private static String unknown(Input input, String text) {
    List<String> ids = input.choices().stream().map(Choice::id).toList();
    return "\"" + text + "\" is not a choice for " + input.id() + ". " + Names.advice(text, ids);
  }

  /** The choice with this spelling; asks back if there are several. */
  private static Optional<Choice> bySpelling(Input input, String text) {
    List<Choice> meant = input.choices().stream().filter(c -> c.mayBeMeantBy(text)).toList();
    if (meant.size() > 1) {
      throw new InputException(
          "\""
              + text
              + "\" may be "
              + meant.stream().map(Choice::words).collect(Collectors.joining(" or "))
              + ". Type which one.");
    }
    return meant.stream().findFirst();
  }

  /** The choice at this position of the list, unless a number could mean something else. */
  private static Optional<Choice> byNumber(Input input, String text) {
    boolean numbersMeanSomething =
        input.choices().stream().anyMatch(c -> c.words().matches("\\d.*"));
    if (numbersMeanSomething || !text.matches("[1-9]\\d?")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(text);
    return number <= input.choices().size()
        ? Optional.of(input.choices().get(number - 1))
        : Optional.empty();
  }
}
