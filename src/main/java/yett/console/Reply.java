package yett.console;

/** The result of a prompt. */
public sealed interface Reply {

  /**
   * A line that the person typed: at most {@value Cleaned#LONGEST} characters in Unicode's composed
   * form (NFC), all spaces ordinary and none at the ends, no control characters.
   *
   * @param text may be empty (the person only pressed Enter)
   */
  record Line(String text) implements Reply {}

  /**
   * The input has ended: Ctrl-D on an empty line, the end of a file or pipe, or a closed terminal.
   */
  record EndOfInput() implements Reply {}

  /** The person pressed Ctrl-C at the prompt; what was typed so far is dropped. */
  record Interrupted() implements Reply {}
}
