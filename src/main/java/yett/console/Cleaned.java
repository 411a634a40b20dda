package yett.console;

import java.text.Normalizer;
import java.util.Optional;

/**
 * A typed line made safe to interpret, or the reason for refusing it. A doubtful line is refused
 * and not repaired: dropping a backspace from "24^H3 V" would invent a reading.
 */
record Cleaned(String text, Optional<String> refusal) {
  static final int LONGEST = 2_000;

  static Cleaned of(String raw) {
    String text = withoutInvisible(raw).strip();
    if (text.length() > LONGEST) {
      return refused("That line is longer than 2,000 characters. Please shorten it.");
    }
    if (text.codePoints().anyMatch(Cleaned::isUnreadable)) {
      return refused(
          "That line has characters that could not be read (UTF-8 is expected). Please type it again.");
    }
    if (text.codePoints().anyMatch(Character::isISOControl)) {
      return refused("That line has control characters in it. Please type it again without them.");
    }
    return new Cleaned(Normalizer.normalize(text, Normalizer.Form.NFC), Optional.empty());
  }

  private static Cleaned refused(String why) {
    return new Cleaned("", Optional.of(why));
  }

  /** The text with all kinds of spaces, and the line ends of a paste, as ordinary spaces. */
  private static String withoutInvisible(String raw) {
    return Characters.visible(raw.replace("\r\n", "\n"))
        .codePoints()
        .map(c -> Characters.isSpace(c) ? ' ' : c)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static boolean isUnreadable(int c) {
    return c == 0xFFFD || Character.getType(c) == Character.SURROGATE;
  }
}
