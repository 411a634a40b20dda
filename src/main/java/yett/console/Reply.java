package yett.console;

/** What came back from a prompt. */
public sealed interface Reply {

  /**
   * A line the person gave: at most {@value Cleaned#LONGEST} characters in Unicode's composed form
   * (NFC), every kind of space an ordinary one, none at either end, no control characters.
   *
   * @param text may be empty (the person only pressed Enter)
   */
  record Line(String text) implements Reply {}

  /** No more will come: Ctrl-D on an empty line, the end of a file or pipe, a closed terminal. */
  record EndOfInput() implements Reply {}

  /** The person pressed Ctrl-C at the prompt; what was typed so far is dropped. */
  record Interrupted() implements Reply {}
}
