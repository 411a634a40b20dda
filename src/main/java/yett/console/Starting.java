package yett.console;

/**
 * The line that stands on the terminal before Java does, so that nobody looks at an empty screen.
 * Who started the program wrote it, without an end, and says what it is.
 */
final class Starting {
  private static final String LINE = "yett.starting";

  private Starting() {}

  /** What wipes the line away, from the terminal that it stands on. */
  static String cleared() {
    String line = System.getProperty(LINE, "");
    return line.isEmpty() ? "" : "\r" + " ".repeat(line.length()) + "\r";
  }
}
