package yett.console;

import java.util.List;

/** Where the program and a person (or a file of answers) talk. */
public interface Console {

  /** Columns a line may fill, 40 to 120; follows the window when it is resized. */
  int width();

  /** Lines that are seen at once; without end where nothing scrolls away unread. */
  default int height() {
    return Integer.MAX_VALUE;
  }

  /** Lines that blocks take. */
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
   * @param completions whole answers that the Tab key offers, where there is one; any other answer
   *     is as good
   */
  Reply ask(String prompt, List<String> completions);

  /**
   * Asks for a command of the program.
   *
   * @param completer what the Tab key offers, where there is one
   * @param history what the arrow keys bring back, where there are any; the caller adds to it
   */
  default Reply askCommand(String prompt, Completer completer, CommandHistory history) {
    return ask(prompt);
  }

  /** Whether a person sits at a terminal, rather than a file or another program. */
  boolean interactive();

  /**
   * Begins to report how far a longer job is: on standard error, if that is a terminal.
   *
   * @param total number of steps
   */
  Progress start(String what, int total);
}
