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

  @Override
  public String toString() {
    String place = line > 0 ? file + ":" + line + ":" + column : file;
    return place + ": " + message + (advice.isEmpty() ? "" : "\n  " + advice);
  }
}
