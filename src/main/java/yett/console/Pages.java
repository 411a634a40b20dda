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
    List<List<Block>> pages = new ArrayList<>();
    List<Block> page = new ArrayList<>(head);
    for (Block block : blocks.subList(head.size(), blocks.size())) {
      for (Block part : parts(block, head)) {
        List<Block> more = new ArrayList<>(page);
        more.add(part);
        if (page.size() > head.size() && !fits(more)) {
          Block last = page.get(page.size() - 1);
          boolean over = last instanceof Block.Heading && page.size() > head.size() + 1;
          pages.add(List.copyOf(over ? page.subList(0, page.size() - 1) : page));
          page = new ArrayList<>(over ? List.of(last) : head);
        }
        page.add(part);
      }
    }
    pages.add(List.copyOf(page));
    return List.copyOf(pages);
  }

  private boolean fits(List<Block> blocks) {
    return console.lines(blocks) <= room;
  }

  /** A list that is no page by itself in lists that are. */
  private List<Block> parts(Block block, List<Block> head) {
    if (!(block instanceof Block.Numbered list)) {
      return List.of(block);
    }
    List<Block> parts = new ArrayList<>();
    List<Block.Item> part = new ArrayList<>();
    for (Block.Item item : list.items()) {
      List<Block.Item> more = new ArrayList<>(part);
      more.add(item);
      List<Block> page = new ArrayList<>(head);
      page.add(new Block.Numbered(more));
      if (!part.isEmpty() && !fits(page)) {
        parts.add(new Block.Numbered(part));
        part.clear();
      }
      part.add(item);
    }
    parts.add(new Block.Numbered(part));
    return parts;
  }
}
