package yett.console;

/**
 * The line that the launcher shows on the terminal until Java has started, so that the screen is
 * not empty. The launcher writes it without a line end and passes its text on.
 */
final class Starting {
  private static final String LINE = "yett.starting";

  private Starting() {}

  /** What deletes the line from the terminal. */
  static String cleared() {
    String line = System.getProperty(LINE, "");
    return line.isEmpty() ? "" : "\r" + " ".repeat(line.length()) + "\r";
  }
}
