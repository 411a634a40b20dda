package yett.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits one typed line into numbers and units, and decides whether they make one reading. */
final class ReadingParser {
  private static final int LONGEST = 60;
  private static final double ABSOLUTE_ZERO = -273.15;

  /**
   * A unit ends where the next number starts; a full stop belongs to it, as in {@code 7 ft. 6 in.}
   */
  private static final Pattern PART =
      Pattern.compile(
          "\\G(?: ?-? ?)(" + Numeral.PATTERN + ") ?([^\\d+\\-.,]*+(?:-[a-z]+)?(?:\\.(?!\\d))?)");

  private static final Pattern SIGN = Pattern.compile("^[+-] ?(?=[\\d.,])");
  private static final Pattern RANGE = Pattern.compile("^[\\d.,]+ ?\\D{0,6}-\\s?[\\d.,]+\\D*$");
  private static final Pattern OVER_RANGE = Pattern.compile("(?i)[+-]?\\.?[0o]\\.?l\\.?");

  /** What people say of a resistance that is too large for the meter. */
  private static final Pattern OPEN =
      Pattern.compile("(?i)open(?: circuit| line)?|infinit(?:e|y)|\u221e");

  /** Says that the reading is not exact, which no reading is. */
  private static final Pattern ABOUT =
      Pattern.compile(
          "(?i)^(?:about|around|roughly|circa|ca\\.?|approx(?:imately)?\\.?) ?(?=[+-]?[.,]?\\d)");

  /** Groups of units that may follow one another in one reading, the larger first. */
  private static final List<List<Unit>> CHAINS =
      List.of(
          List.of(Unit.FOOT, Unit.INCH),
          List.of(Unit.METRE, Unit.CENTIMETRE, Unit.MILLIMETRE),
          List.of(Unit.HOUR, Unit.MINUTE, Unit.SECOND));

  private record Part(double number, Unit unit, boolean named) {}

  private final String typed;
  private final Quantity quantity;
  private final Unit shownUnit;
  private final String example;

  ReadingParser(String typed, Quantity quantity, Unit shownUnit, String example) {
    this.typed = typed.strip();
    this.quantity = quantity;
    this.shownUnit = quantity.requireOwn(shownUnit);
    this.example = example;
  }

  static boolean isOverRange(String line, Quantity quantity) {
    return OVER_RANGE.matcher(line).matches()
        || quantity == Quantity.RESISTANCE && OPEN.matcher(line).matches();
  }

  Reading reading() {
    Reading reading = read(part -> part.unit().toCanonical(part.number()));
    if (quantity == Quantity.TEMPERATURE && reading.value() < ABSOLUTE_ZERO) {
      throw new ReadingException(
          Spelling.quoted(typed) + " is colder than anything can be; " + request());
    }
    return reading;
  }

  Reading difference() {
    return read(part -> part.unit().differenceToCanonical(part.number()));
  }

  private Reading read(ToDoubleFunction<Part> toCanonical) {
    List<Part> parts = parts(line());
    double value = parts.stream().mapToDouble(toCanonical).sum();
    if (!Double.isFinite(value)) {
      throw new ReadingException(Spelling.quoted(typed) + " is too large to be a reading.");
    }
    return new Reading(value, typed, quantity, parts.get(0).unit());
  }

  private String line() {
    if (typed.length() > LONGEST) {
      throw new ReadingException(
          Spelling.quoted(typed) + " is too long for a reading; " + request());
    }
    if (!typed.codePoints().allMatch(Spelling::printable)) {
      throw new ReadingException(
          Spelling.quoted(typed) + " holds a character that cannot be printed; type it again.");
    }
    // The 2 of "s2" belongs to the unit and must not be read as a number.
    String line = NumberWords.figures(Keyboard.plain(typed)).replaceAll("(?i)/ ?s\\^?2$", "/s²");
    line = ABOUT.matcher(line).replaceFirst("");
    if (line.isEmpty()) {
      throw new ReadingException("Nothing was typed; " + request());
    }
    if (isOverRange(line, quantity)) {
      throw new ReadingException(
          Spelling.quoted(typed)
              + " means that the meter is out of its range; choose another range, or say that you"
              + " cannot tell.");
    }
    return line;
  }

  private List<Part> parts(String line) {
    Matcher sign = SIGN.matcher(line);
    boolean signed = sign.find();
    boolean negative = signed && line.charAt(0) == '-';
    String unsigned = signed ? line.substring(sign.end()) : line;
    if (!unsigned.matches("[\\d.,].*") || unsigned.chars().noneMatch(c -> c >= '0' && c <= '9')) {
      throw new ReadingException(noNumber(line));
    }
    List<Part> parts = new ArrayList<>();
    Matcher part = PART.matcher(unsigned);
    int end = 0;
    while (end < unsigned.length() && part.find()) {
      double number = Numeral.value(part.group(1));
      String unit = part.group(2).strip();
      parts.add(new Part(negative ? -number : number, unit(unit), !unit.isEmpty()));
      end = part.end();
    }
    if (end < unsigned.length()) {
      throw new ReadingException(unreadable(unsigned));
    }
    requireChain(parts, unsigned);
    return parts;
  }

  private Unit unit(String spelling) {
    if (spelling.isEmpty()) {
      return shownUnit;
    }
    Optional<Unit> meant = inContext(spelling).or(() -> Spellings.find(spelling));
    if (meant.isEmpty()) {
      throw new ReadingException(
          Spelling.quoted(spelling)
              + " is not a unit of "
              + quantity.label()
              + "; "
              + Spelling.didYouMean(spelling, Spellings.all(Unit.of(quantity)))
                  .orElseGet(this::unitAdvice));
    }
    if (meant.get().quantity() != quantity) {
      throw new ReadingException(
          Spelling.quoted(spelling) + " is " + meant.get().quantity().phrase() + "; " + request());
    }
    return meant.get();
  }

  /** Finds the unit of a short form that is clear only because the quantity is known. */
  private Optional<Unit> inContext(String spelling) {
    return switch (quantity) {
      case TEMPERATURE ->
          List.of("°", "deg", "degree", "degrees").contains(spelling.toLowerCase(Locale.ROOT))
              ? Optional.of(shownUnit)
              : Optional.empty();
      case RESISTANCE ->
          switch (spelling) {
            case "k", "K" -> Optional.of(Unit.KILOHM);
            case "M" -> Optional.of(Unit.MEGOHM);
            default -> Optional.empty();
          };
      default -> Optional.empty();
    };
  }

  private String unitAdvice() {
    return quantity == Quantity.COUNT
        ? "type the number alone."
        : "use " + quantity.unitList() + ".";
  }

  /**
   * Refuses feet and inches, or hours, minutes and seconds, unless the larger parts are whole, the
   * units come in order and no smaller part is too large.
   */
  private void requireChain(List<Part> parts, String line) {
    if (parts.size() == 1) {
      return;
    }
    List<Unit> units = parts.stream().map(Part::unit).toList();
    boolean known =
        parts.stream().allMatch(Part::named)
            && CHAINS.stream()
                .anyMatch(chain -> chain.stream().filter(units::contains).toList().equals(units));
    if (!known) {
      throw new ReadingException(unreadable(line));
    }
    for (int i = 1; i < parts.size(); i++) {
      Part larger = parts.get(i - 1);
      Part smaller = parts.get(i);
      double step = larger.unit().toCanonical(1) / smaller.unit().toCanonical(1);
      if (larger.number() != Math.rint(larger.number())
          || Math.abs(smaller.number()) >= step * (1 - 1e-12)) {
        throw new ReadingException(
            Spelling.quoted(typed)
                + " does not add up; the "
                + larger.unit().symbol()
                + " must be whole, and the "
                + smaller.unit().symbol()
                + " less than 1 "
                + larger.unit().symbol()
                + ".");
      }
    }
  }

  private String noNumber(String line) {
    if (line.matches("[<>~≈±].*")) {
      return Spelling.quoted(typed) + " is not one number; type the reading without the sign.";
    }
    return line.chars().anyMatch(c -> c >= '0' && c <= '9')
        ? Spelling.quoted(typed) + " does not begin with a number; " + request()
        : "There is no number in " + Spelling.quoted(typed) + "; " + request();
  }

  private String unreadable(String line) {
    if (line.matches("[\\d.,]+ ?('|ft|feet)\\.? ?-? ?[\\d.,/ ]+")) {
      return Spelling.quoted(typed) + " lacks the unit after the feet; type it like 7 ft 6 in.";
    }
    return RANGE.matcher(line).matches()
        ? Spelling.quoted(typed) + " looks like two readings; type one."
        : Spelling.quoted(typed) + " cannot be read; " + request();
  }

  private String request() {
    return quantity.request(shownUnit, example);
  }
}
