package yett.console;

import java.text.Normalizer;
import java.util.Map;

/** Kinds of characters that need care on the way in and out. */
final class Characters {
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;
  private static final int FIRST_THAT_JOINS = 0x0590;

  /** ASCII spellings of characters of the trade that a plain terminal lacks. */
  private static final Map<Integer, String> ASCII =
      Map.ofEntries(
          Map.entry(0x2010, "-"),
          Map.entry(0x2011, "-"),
          Map.entry(0x2012, "-"),
          Map.entry(0x2013, "-"),
          Map.entry(0x2014, "-"),
          Map.entry(0x2212, "-"),
          Map.entry(0x2018, "'"),
          Map.entry(0x2019, "'"),
          Map.entry(0x2032, "'"),
          Map.entry(0x201C, "\""),
          Map.entry(0x201D, "\""),
          Map.entry(0x2033, "\""),
          Map.entry(0x2022, "*"),
          Map.entry(0x00B7, "*"),
          Map.entry(0x22C5, "*"),
          Map.entry(0x00D7, "x"),
          Map.entry(0x00F7, "/"),
          Map.entry(0x2044, "/"),
          Map.entry(0x00B1, "+/-"),
          Map.entry(0x2248, "~"),
          Map.entry(0x2264, "<="),
          Map.entry(0x2265, ">="),
          Map.entry(0x2260, "/="),
          Map.entry(0x2190, "<-"),
          Map.entry(0x2192, "->"),
          Map.entry(0x00B0, "deg"),
          Map.entry(0x03A9, "ohm"),
          Map.entry(0x2126, "ohm"),
          Map.entry(0x00B5, "u"),
          Map.entry(0x03BC, "u"),
          Map.entry(0x03C3, "sigma"),
          Map.entry(0x0394, "delta"));

  private Characters() {}

  static boolean isNoBreakSpace(int c) {
    return c == 0x00A0 || c == 0x2007 || c == 0x202F;
  }

  /** Any space or line end, breaking or not. */
  static boolean isSpace(int c) {
    return Character.isWhitespace(c) && !isSeparatorControl(c) || Character.isSpaceChar(c);
  }

  /** Whether a character may control a screen instead of being shown. */
  static boolean steers(int c) {
    int type = Character.getType(c);
    return Character.isISOControl(c)
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  /**
   * Text without invisible format characters (byte order mark, soft hyphen, direction overrides).
   * Joiners stay where a script or an emoji needs them.
   */
  static String visible(String text) {
    StringBuilder out = new StringBuilder(text.length());
    int before = ' ';
    for (int c : text.codePoints().toArray()) {
      if (Character.getType(c) != Character.FORMAT || isJoiner(c) && joins(before)) {
        out.appendCodePoint(c);
        before = c;
      }
    }
    return out.toString();
  }

  private static boolean isJoiner(int c) {
    return c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER;
  }

  /**
   * Whether the script uses joiners. Latin, Greek and Cyrillic do not; there a joiner would only
   * make two different names look alike.
   */
  private static boolean joins(int before) {
    return before >= FIRST_THAT_JOINS && !isJoiner(before) && !isSpace(before);
  }

  /**
   * Text that cannot control a terminal, whoever wrote it: without control characters and direction
   * overrides, and with ordinary and no-break spaces only.
   */
  static String forScreen(String text) {
    StringBuilder out = new StringBuilder(text.length());
    visible(text)
        .codePoints()
        .map(c -> isNoBreakSpace(c) ? 0x00A0 : isSpace(c) ? ' ' : c)
        .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE)
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /** The nearest ASCII spelling. No-break spaces stay, because the line breaker needs them. */
  static String toAscii(String text) {
    StringBuilder out = new StringBuilder(text.length());
    int[] characters = text.codePoints().toArray();
    for (int i = 0; i < characters.length; i++) {
      int before = i == 0 ? ' ' : characters[i - 1];
      out.append(joint(before, characters[i])).append(toAscii(characters[i]));
    }
    return out.toString();
  }

  /**
   * The character to insert before a fraction or a superscript, so that 7½ does not become 71/2,
   * nor 10² 102.
   */
  private static String joint(int before, int c) {
    if (isSuperscript(c)) {
      return isSuperscript(before) ? "" : "^";
    }
    boolean fraction =
        Character.getType(c) == Character.OTHER_NUMBER && compatible(c).contains("/");
    return fraction && Character.isDigit(before) ? " " : "";
  }

  private static boolean isSuperscript(int c) {
    return c == '²' || c == '³' || c == '¹' || c == 0x2070 || c >= 0x2074 && c <= 0x207B;
  }

  private static String toAscii(int c) {
    if (c < 0x80 || isNoBreakSpace(c)) {
      return Character.toString(c);
    }
    String known = ASCII.get(c);
    if (known != null) {
      return known;
    }
    String parts = compatible(c).replaceAll("\\p{M}", "");
    return parts.codePoints().allMatch(part -> part < 0x80) ? parts : "?";
  }

  private static String compatible(int c) {
    return Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKD)
        .replace('\u2044', '/')
        .replace('\u2212', '-');
  }

  private static boolean isSeparatorControl(int c) {
    return c >= 0x1C && c <= 0x1F;
  }
}
