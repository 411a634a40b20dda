package yett.command.diagnose;

import java.util.List;
import java.util.stream.IntStream;
import yett.console.Block;

/**
 * A list of which several may be picked, a page at a time on a terminal of 24 lines; in a pipe it
 * is shown whole.
 */
final class LongList {
  /** The word that shows the next page. */
  static final String MORE = "more";

  private static final int PAGE = 18;

  private final Sitting sitting;
  private final List<Block> head;
  private final List<String> names;
  private final int page;
  private int shown;

  LongList(Sitting sitting, List<Block> head, List<String> names) {
    this.sitting = sitting;
    this.head = head;
    this.names = names;
    int pages = sitting.pages() ? (names.size() + PAGE - 1) / PAGE : 1;
    this.page = (names.size() + pages - 1) / Math.max(1, pages);
  }

  static LongList of(Sitting sitting, String heading, String text, List<String> names) {
    return new LongList(sitting, List.of(Block.heading(heading), Block.paragraph(text)), names);
  }

  /** From the beginning. */
  void show() {
    shown = 0;
    sitting.show(head);
    next();
  }

  /** Whether there is more that was not shown yet. */
  boolean hasMore() {
    return shown < names.size();
  }

  /** Shows the next page if the line asks for it and there is one. */
  boolean turns(String line) {
    boolean turns = hasMore() && line.strip().equalsIgnoreCase(MORE);
    if (turns) {
      next();
    }
    return turns;
  }

  private void next() {
    int end = Math.min(names.size(), shown + page);
    sitting.show(
        new Block.Numbered(
            IntStream.range(shown, end)
                .mapToObj(i -> Block.item(Integer.toString(i + 1), names.get(i)))
                .toList()));
    shown = end;
  }

  /** With how the rest is reached, if there is any. */
  String prompt(String prompt) {
    return hasMore()
        ? prompt + ", " + MORE + " for " + (shown + 1) + " to " + names.size()
        : prompt;
  }
}
