package yett.command.diagnose.sitting;

import java.util.List;
import java.util.function.Predicate;
import yett.console.Block;
import yett.console.Pages;
import yett.interview.moment.Moment;

/** Shows screens that have to be read, a page at a time if they would scroll away. */
final class ReadScreens {
  private static final String PROMPT = "Press Enter when you have read this";

  private final Sitting sitting;
  private Predicate<String> requests = line -> false;

  /** Lines shown since the last input. */
  private int lines;

  ReadScreens(Sitting sitting) {
    this.sitting = sitting;
  }

  void shown(int more) {
    lines += more;
  }

  void typed() {
    lines = 0;
  }

  /** Sets what handles other lines typed where only Enter is expected. */
  void hears(Predicate<String> requests) {
    this.requests = requests;
  }

  boolean grants(String line) {
    return requests.test(line);
  }

  /**
   * @throws MovedOnException if a line typed in between has changed the case
   */
  void show(Pages window, List<Block> blocks) {
    if (lines > 0 && !window.hasRoom(lines, blocks)) {
      read(); // else the last answer's result would push the heading off the window
    }
    show(window.of(blocks));
  }

  void show(List<List<Block>> pages) {
    for (int i = 0; i < pages.size(); i++) {
      sitting.show(pages.get(i));
      if (i + 1 < pages.size()) {
        read();
      }
    }
  }

  /** Waits for Enter. Requests work here as at every prompt. */
  private void read() {
    Moment before = sitting.moment();
    String line = sitting.line(PROMPT);
    while (!line.isBlank()) {
      if (!requests.test(line)) {
        sitting.say(
            "Press Enter to go on. danger and the other words work here too; save stops here.");
      } else if (sitting.moment() != before) {
        throw new MovedOnException();
      }
      line = sitting.line(PROMPT);
    }
  }
}
