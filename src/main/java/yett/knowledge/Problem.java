package yett.knowledge;

/**
 * Something wrong in the rule base, told so that a trainer can mend it.
 *
 * @param kind one word for the sort of problem, such as {@code unknown-name}
 * @param line 1-based, 0 if unknown
 * @param advice what to do about it; may be empty
 */
public record Problem(
    String kind, String file, int line, int column, String message, String advice) {
  private static final int LONGEST = 600;

  /** What a card says may be hostile: no control characters reach a terminal, and no books. */
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
