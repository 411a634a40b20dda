package yett.console;

import java.util.ArrayList;
import java.util.List;

/**
 * A screen in pages, so that nothing scrolls away that must be read. It is parted between blocks,
 * or between the items of a list that is longer than a page; a heading stands over each page.
 */
public final class Pages {
  /** The line typed before, the prompt, and one to see that it goes on. */
  private static final int SPARE = 3;

  /** A window of fewer lines scrolls whatever is done. */
  private static final int LEAST = 12;

  private static final int PROMPT = 2;

  private final Console console;
  private final int room;

  public Pages(Console console) {
    this.console = console;
    int height = Math.max(LEAST, console.height());
    this.room = height == Integer.MAX_VALUE ? height : height - SPARE;
  }

  /** One or more, in order. */
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

  /** Whether something goes under so many lines, with its prompt, and nothing scrolls away. */
  public boolean hasRoom(int lines, List<Block> blocks) {
    return room == Integer.MAX_VALUE
        || lines + Math.min(room, console.lines(blocks)) <= room + SPARE - PROMPT;
  }

  private boolean fits(List<Block> blocks) {
    return console.lines(blocks) <= room;
  }

  /** Pages that are being filled, each under the same heading. */
  private final class Filling {
    private final List<Block> head;
    private final List<List<Block>> pages = new ArrayList<>();
    private List<Block> page;

    Filling(List<Block> head) {
      this.head = head;
      this.page = new ArrayList<>(head);
    }

    List<List<Block>> of(List<Block> blocks) {
      for (Block block : blocks) {
        if (!isRoomFor(block) && page.size() > head.size() && fitsAlone(block)) {
          turn();
        }
        if (!isRoomFor(block) && block instanceof Block.Numbered list) {
          items(list);
        } else {
          page.add(block);
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

    /** A new page; a heading that stands last goes over to it. */
    private void turn() {
      Block last = page.get(page.size() - 1);
      boolean over = last instanceof Block.Heading && page.size() > head.size() + 1;
      pages.add(List.copyOf(over ? page.subList(0, page.size() - 1) : page));
      page = new ArrayList<>(over ? List.of(last) : head);
    }

    /** A list longer than a page fills each as far as it goes. */
    private void items(Block.Numbered list) {
      List<Block.Item> part = new ArrayList<>();
      for (Block.Item item : list.items()) {
        List<Block.Item> more = new ArrayList<>(part);
        more.add(item);
        if (!part.isEmpty() && !isRoomFor(new Block.Numbered(more))) {
          page.add(new Block.Numbered(part));
          turn();
          more = new ArrayList<>(List.of(item));
        }
        part = more;
      }
      page.add(new Block.Numbered(part));
    }
  }

  private static List<Block> with(List<Block> blocks, Block last) {
    List<Block> more = new ArrayList<>(blocks);
    more.add(last);
    return more;
  }
}
