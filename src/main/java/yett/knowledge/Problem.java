package yett.knowledge;

/**
 * An error in the rule base, worded so that a trainer can correct it.
 *
 * @param kind one word for the sort of problem, such as {@code unknown-name}
 * @param line 1-based, 0 if unknown
 * @param advice what to do about it; may be empty
 */
public record Problem(
    String kind, String file, int line, int column, String message, String advice) {
  private static final int LONGEST = 600;

  /**
   * Makes the message safe to show: texts of cards may be hostile, so control characters are
   * replaced and long texts are cut.
   */
  public Problem {
    file = plain(file);
    message = plain(message);
    advice = plain(advice);
  }

  private static String plain(String text) {
    String plain = text.replaceAll("[\\p{Cntrl}&&[^\n]]", "?");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
  }

  @Override
  public String toString() {
    String place = line > 0 ? file + ":" + line + ":" + column : file;
    return place + ": " + message + (advice.isEmpty() ? "" : "\n  " + advice);
  }
}
