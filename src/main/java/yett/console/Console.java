package yett.console;

import java.util.List;

/**
 * The input and output through which the program talks with a person, or reads a file of answers.
 */
public interface Console {

  /** Columns of a line, 40 to 120; follows the window when it is resized. */
  int width();

  /**
   * Lines that are visible at once; {@link Integer#MAX_VALUE} if nothing can scroll away unread.
   */
  default int height() {
    return Integer.MAX_VALUE;
  }

  /** How many lines the blocks take. */
  int lines(List<Block> blocks);

  /** Shows blocks, one below the other. */
  void show(List<Block> blocks);

  default void show(Block... blocks) {
    show(List.of(blocks));
  }

  /** Shows a paragraph. */
  default void say(String words) {
    show(Block.paragraph(words));
  }

  /** Asks for a line. A line that cannot be used is refused with a reason, and asked for again. */
  default Reply ask(String prompt) {
    return ask(prompt, List.of());
  }

  /**
   * Asks for a line.
   *
   * @param completions whole answers that the Tab key offers, if there is one; other answers are
   *     allowed
   */
  Reply ask(String prompt, List<String> completions);

  /**
   * Asks for a command of the program.
   *
   * @param completer finds what the Tab key offers, if there is one
   * @param history what the arrow keys bring back, if there are any; the caller adds to it
   */
  default Reply askCommand(String prompt, Completer completer, CommandHistory history) {
    return ask(prompt);
  }

  /** Whether a person sits at a terminal; false for a file or another program. */
  boolean interactive();

  /**
   * Begins to report the progress of a longer job, on standard error if that is a terminal.
   *
   * @param total number of steps
   */
  Progress start(String what, int total);
}
