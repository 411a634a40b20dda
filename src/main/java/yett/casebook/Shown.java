package yett.casebook;

/**
 * Quotes in messages what somebody else wrote: shortened, and without characters that control a
 * terminal.
 */
final class Shown {
  private static final int LONGEST = 40;

  private Shown() {}

  static String quoted(String text) {
    String plain = text.replaceAll("[^\\p{L}\\p{M}\\p{N}\\p{P}\\p{S} ]", "?");
    int end =
        plain.offsetByCodePoints(0, Math.min(LONGEST, plain.codePointCount(0, plain.length())));
    return "\"" + plain.substring(0, end) + (end < plain.length() ? "…" : "") + "\"";
  }
}
