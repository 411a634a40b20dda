package yett.command.diagnose.sitting;

import java.util.ArrayList;
import java.util.List;
import yett.console.Block;

/**
 * A list from which several entries may be chosen. It is shown a page at a time if it does not fit
 * the window; in a pipe it is shown whole.
 */
public final class LongList {
  /** The word that shows the next page. */
  static final String MORE = "more";

  private final Sitting sitting;
  private final List<List<Block>> pages;
  private int shown;

  public LongList(Sitting sitting, List<Block> head, List<String> names) {
    this.sitting = sitting;
    List<Block> all = new ArrayList<>(head);
    all.add(Block.numbered(names));
    this.pages = sitting.pages().of(all);
  }

  public static LongList of(Sitting sitting, String heading, String text, List<String> names) {
    return new LongList(sitting, List.of(Block.heading(heading), Block.paragraph(text)), names);
  }

  /** Shows the first page. */
  public void show() {
    shown = 0;
    next();
  }

  /** Whether there are entries that were not shown yet. */
  boolean hasMore() {
    return shown < pages.size();
  }

  /** Shows the next page if the line asks for it and there is one; returns whether it did. */
  public boolean turns(String line) {
    boolean turns = hasMore() && line.strip().equalsIgnoreCase(MORE);
    if (turns) {
      next();
    }
    return turns;
  }

  private void next() {
    sitting.show(pages.get(shown++));
  }

  /** The prompt, with how to see the rest if there is any. */
  public String prompt(String prompt) {
    return hasMore() ? prompt + ", " + MORE + " for the rest of the list" : prompt;
  }
}
