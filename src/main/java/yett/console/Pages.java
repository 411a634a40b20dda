package yett.console;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Divides a screen into pages, so that nothing that must be read scrolls away. It is divided
 * between blocks, or between the items of a list that is longer than a page. Each page begins with
 * the heading that its text belongs to.
 */
public final class Pages {
  /** Lines to leave free: the line typed before, the prompt, and one line of the text to come. */
  private static final int SPARE = 3;

  /** In a window of fewer lines, text scrolls away in any case. */
  private static final int LEAST = 12;

  private static final int PROMPT = 2;

  private final Console console;
  private final int room;

  public Pages(Console console) {
    this.console = console;
    int height = Math.max(LEAST, console.height());
    this.room = height == Integer.MAX_VALUE ? height : height - SPARE;
  }

  /** The pages in order; at least one. */
  public List<List<Block>> of(List<Block> blocks) {
    if (fits(blocks)) {
      return List.of(blocks);
    }
    List<Block> head =
        !blocks.isEmpty() && blocks.get(0) instanceof Block.Heading
            ? List.of(blocks.get(0))
            : List.of();
    return new Filling(head).of(blocks.subList(head.size(), blocks.size()));
  }

  /** Whether the blocks with their prompt fit below this many lines without scrolling. */
  public boolean hasRoom(int lines, List<Block> blocks) {
    return room == Integer.MAX_VALUE
        || lines + Math.min(room, console.lines(blocks)) <= room + SPARE - PROMPT;
  }

  private boolean fits(List<Block> blocks) {
    return console.lines(blocks) <= room;
  }

  /** Fills pages, each under the latest heading. */
  private final class Filling {
    private List<Block> head;
    private final List<List<Block>> pages = new ArrayList<>();
    private List<Block> page;

    Filling(List<Block> head) {
      this.head = head;
      this.page = new ArrayList<>(head);
    }

    List<List<Block>> of(List<Block> blocks) {
      for (Block block : blocks) {
        boolean alone = isLedTo(block) ? fits(with(with(head, last()), block)) : fitsAlone(block);
        if (!isRoomFor(block) && page.size() > head.size() && alone) {
          turn(block);
          if (block instanceof Block.Heading && page.equals(head)) {
            page = new ArrayList<>(); // it begins something else
          }
        }
        if (!isRoomFor(block) && block instanceof Block.Numbered list) {
          parted(list.items(), Block.Numbered::new);
        } else if (!isRoomFor(block) && block instanceof Block.Rows rows) {
          parted(rows.rows(), Block.Rows::new);
        } else {
          page.add(block);
          head = block instanceof Block.Heading ? List.of(block) : head;
        }
      }
      pages.add(List.copyOf(page));
      return List.copyOf(pages);
    }

    private boolean isRoomFor(Block block) {
      return fits(with(page, block));
    }

    private boolean fitsAlone(Block block) {
      return fits(with(head, block));
    }

    private Block last() {
      return page.get(page.size() - 1);
    }

    /** Whether the page ends with the line that stands before this list. */
    private boolean isLedTo(Block next) {
      return page.size() > head.size() + 1
          && last() instanceof Block.Paragraph
          && next instanceof Block.Numbered;
    }

    /**
     * Begins a new page with this block; what leads to it at the end of the old one moves with it:
     * a heading, or the line before a list.
     */
    private void turn(Block next) {
      Block last = last();
      boolean over = last instanceof Block.Heading && page.size() > head.size() + 1;
      boolean leads = isLedTo(next);
      int left = page.size() - (over || leads ? 1 : 0);
      if (leads && page.get(left - 1) instanceof Block.Heading) {
        left--; // the new page begins with it
      }
      pages.add(List.copyOf(page.subList(0, left)));
      page = new ArrayList<>(over ? List.of(last) : leads ? with(head, last) : head);
    }

    /** Divides a list that is longer than a page over several pages. */
    private <T> void parted(List<T> items, Function<List<T>, Block> block) {
      List<T> part = new ArrayList<>();
      for (T item : items) {
        List<T> more = new ArrayList<>(part);
        more.add(item);
        if (!part.isEmpty() && !isRoomFor(block.apply(more))) {
          page.add(block.apply(part));
          turn(block.apply(more));
          more = new ArrayList<>(List.of(item));
        }
        part = more;
      }
      page.add(block.apply(part));
    }
  }

  private static List<Block> with(List<Block> blocks, Block last) {
    List<Block> more = new ArrayList<>(blocks);
    more.add(last);
    return more;
  }
}
