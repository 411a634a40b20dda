package yett.command.cases;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.casebook.Person;

/** Finds people in texts by their names and telephone numbers. */
final class NamedPeople {
  /** A shorter part of a name, or of a number, is in too many texts by chance. */
  private static final int SHORTEST = 3;

  private static final int FEWEST_DIGITS = 6;

  /** Stands in a text where a name or number was. */
  private static final String GONE = "…";

  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

  private final List<String> whole;
  private final Set<String> parts;
  private final List<String> numbers;

  NamedPeople(List<Person> people) {
    this.whole =
        people.stream()
            .flatMap(p -> Stream.of(p.name(), p.phone()))
            .map(t -> t.strip().toLowerCase(Locale.ROOT))
            .filter(t -> t.length() >= SHORTEST)
            .toList();
    this.parts =
        people.stream()
            .flatMap(p -> words(p.name()))
            .filter(w -> w.length() >= SHORTEST)
            .collect(Collectors.toSet());
    this.numbers =
        people.stream()
            .map(p -> digits(p.phone()))
            .filter(n -> n.length() >= FEWEST_DIGITS)
            .toList();
  }

  /** Whether a text has a name or number as it was entered. */
  boolean isIn(String text) {
    return whole.stream().anyMatch(text.toLowerCase(Locale.ROOT)::contains);
  }

  /** Whether a text has a word of a name, or a number in another spelling. */
  boolean isHintedAt(String text) {
    return words(text).anyMatch(parts::contains)
        || numbers.stream().anyMatch(digits(text)::contains);
  }

  /** Whether it names one person: "Ina" alone is in notes about others too. */
  static boolean isWhole(String nameOrNumber) {
    return nameOrNumber.strip().contains(" ") || digits(nameOrNumber).length() >= FEWEST_DIGITS;
  }

  /** Somebody as they were typed, a name or a number. */
  static NamedPeople of(String nameOrNumber) {
    boolean number = digits(nameOrNumber).length() >= FEWEST_DIGITS;
    return new NamedPeople(
        List.of(
            new Person(
                Person.Part.CALLER, number ? "" : nameOrNumber, number ? nameOrNumber : "")));
  }

  /** The text without these names and numbers. */
  String without(String text) {
    String left = text;
    for (String name : whole) {
      left = left.replaceAll("(?iu)" + Pattern.quote(name), GONE);
    }
    for (String number : numbers) {
      String spelt = String.join("[ ()/.-]*", number.split(""));
      left = left.replaceAll("\\+?\\(?" + spelt, GONE);
    }
    for (String part : parts) {
      left =
          left.replaceAll(
              "(?iu)(?<![\\p{L}\\p{N}])" + Pattern.quote(part) + "(?![\\p{L}\\p{N}])", GONE);
    }
    return left;
  }

  private static Stream<String> words(String text) {
    return Arrays.stream(NO_WORD.split(text.toLowerCase(Locale.ROOT)));
  }

  private static String digits(String text) {
    return text.replaceAll("\\D", "");
  }
}
