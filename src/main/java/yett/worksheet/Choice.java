package yett.worksheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One of the values that a choice input can have.
 *
 * @param id the typed word, such as {@code awg-12}
 * @param words the name on screens, such as {@code 12 AWG}; may be typed as well
 * @param spellings other spellings; if several choices share one, the person is asked which is
 *     meant
 */
public record Choice(String id, String words, List<String> spellings) {
  public Choice {
    spellings = List.copyOf(spellings);
  }

  public Choice(String id, String words) {
    this(id, words, List.of());
  }

  /**
   * A wire size, such as {@code 12 AWG} or {@code 2.5 mm2}, with the spellings of plates and
   * drawings.
   */
  public static Choice wire(String size) {
    String[] parts = size.split(" ");
    String number = parts[0];
    List<String> spellings = new ArrayList<>(List.of(number));
    spellings.addAll(
        parts[1].equals("AWG")
            ? List.of(
                "#" + number, "no. " + number, number + " ga", number + " gauge", "awg " + number)
            : List.of(number + " sq mm", number + " mm sq"));
    String id = parts[1] + "-" + number.replace('.', '-').replace('/', '-');
    return new Choice(id.toLowerCase(Locale.ROOT), size, spellings);
  }

  /** One choice for each constant of an enum; its id is the name in lower case with hyphens. */
  public static <E extends Enum<E>> List<Choice> each(Class<E> of, Function<E, String> words) {
    return Arrays.stream(of.getEnumConstants())
        .map(e -> new Choice(e.name().toLowerCase(Locale.ROOT).replace('_', '-'), words.apply(e)))
        .toList();
  }

  boolean isMeantBy(String typed) {
    return id.equalsIgnoreCase(typed.strip().replace(' ', '-'))
        || plain(words).equals(plain(typed));
  }

  boolean mayBeMeantBy(String typed) {
    return spellings.stream().anyMatch(spelling -> plain(spelling).equals(plain(typed)));
  }

  /**
   * The text without spaces, superscripts and full stops at the end of a word, and with a decimal
   * point.
   */
  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replace(',', '.')
        .replaceAll("²|\\^2", "2")
        .replaceAll("\\.(?!\\d)", "")
        .replaceAll("\\s", "");
  }
}
