package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PagesTest {
  private final Pages pages = new Pages(new Window(24));

  private static Block list(int items) {
    return Block.numbered(IntStream.range(0, items).mapToObj(i -> "look " + i).toList());
  }

  @Test
  void what_fits_is_one_page() {
    List<Block> blocks = List.of(Block.heading("Looks"), list(15));
    assertThat(pages.of(blocks)).containsExactly(blocks);
  }

  @Test
  void a_heading_stands_over_each_page_and_nothing_is_lost() {
    Block caution = Block.paragraph("word ".repeat(200));
    List<List<Block>> all = pages.of(List.of(Block.heading("Looks"), caution, list(15)));
    assertThat(all).hasSize(2);
    assertThat(all).allMatch(page -> page.get(0).equals(Block.heading("Looks")));
    assertThat(all.get(1)).containsExactly(Block.heading("Looks"), list(15));
  }

  @Test
  void a_heading_is_never_torn_from_what_it_stands_over() {
    List<List<Block>> all =
        pages.of(
            List.of(
                Block.heading("Plan"),
                list(16),
                Block.heading("Repair"),
                Block.paragraph("done"),
                list(10)));
    assertThat(all)
        .allSatisfy(
            page -> assertThat(page.get(page.size() - 1)).isNotInstanceOf(Block.Heading.class));
  }

  @Test
  void a_line_before_a_list_goes_with_it() {
    Block told = Block.paragraph("Read out. This holds until somebody comes:");
    List<List<Block>> all =
        pages.of(
            List.of(Block.heading("Emergency"), list(5), Block.paragraph("Fire."), told, list(15)));
    assertThat(all).hasSize(2);
    assertThat(all.get(1)).containsExactly(Block.heading("Emergency"), told, list(15));
  }

  @Test
  void a_page_stands_under_the_heading_that_its_text_belongs_to() {
    List<List<Block>> all =
        pages.of(
            List.of(Block.heading("Plan"), list(5), Block.heading("Repair"), list(10), list(15)));
    assertThat(all).hasSize(2);
    assertThat(all.get(0).get(0)).isEqualTo(Block.heading("Plan"));
    assertThat(all.get(1)).containsExactly(Block.heading("Repair"), list(15));
  }

  /** A heading that nothing more stands under does not come again over something else. */
  @Test
  void what_begins_a_page_stands_under_its_own_heading_alone() {
    List<List<Block>> all =
        pages.of(
            List.of(
                Block.heading("Plan of work"),
                list(17),
                Block.heading("Repair"),
                Block.paragraph("step"),
                list(3)));
    assertThat(all.get(1).get(0)).isEqualTo(Block.heading("Repair"));
    assertThat(all).noneMatch(p -> p.size() > 1 && p.get(1) instanceof Block.Heading);
  }

  @Test
  void rows_longer_than_a_window_are_parted_too() {
    Block.Rows rows =
        new Block.Rows(
            IntStream.range(0, 30).mapToObj(i -> Block.row("word " + i, "meaning")).toList());
    List<List<Block>> all = pages.of(List.of(Block.heading("At every prompt"), rows));
    assertThat(all).hasSize(2);
    assertThat(all)
        .allMatch(page -> page.get(0).equals(Block.heading("At every prompt")))
        .allMatch(page -> Renderer.render(page, new Layout(80, false, true)).lines().count() <= 21);
  }

  @Test
  void a_list_longer_than_a_window_is_parted_between_its_items() {
    List<List<Block>> all =
        pages.of(List.of(Block.heading("What is wrong?"), Block.paragraph("Pick."), list(36)));
    assertThat(all).hasSize(2);
    assertThat(items(all.get(0)).count()).isGreaterThan(10);
    assertThat(all.stream().flatMap(PagesTest::items)).hasSize(36);
  }

  private static Stream<Block.Item> items(List<Block> page) {
    return page.stream()
        .filter(Block.Numbered.class::isInstance)
        .flatMap(b -> ((Block.Numbered) b).items().stream());
  }

  @Test
  void nothing_is_parted_where_nothing_scrolls_away() {
    assertThat(new Pages(new Window(Integer.MAX_VALUE)).of(List.of(list(200)))).hasSize(1);
  }

  /** What stands above is read as well: 4 and 18 lines and a prompt of two go into 24, no more. */
  @Test
  void a_screen_has_room_under_what_was_said_before_it_as_long_as_nothing_scrolls_away() {
    Pages window = new Pages(new Window(24));
    assertThat(window.hasRoom(4, List.of(list(18)))).isTrue();
    assertThat(window.hasRoom(5, List.of(list(18)))).isFalse();
    assertThat(new Pages(new Window(Integer.MAX_VALUE)).hasRoom(500, List.of(list(200)))).isTrue();
  }

  /** Nobody sits there: only its height counts. */
  private record Window(int height) implements Console {
    @Override
    public int width() {
      return 80;
    }

    @Override
    public int lines(List<Block> blocks) {
      return (int) Renderer.render(blocks, new Layout(80, false, true)).lines().count();
    }

    @Override
    public void show(List<Block> blocks) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Reply ask(String prompt, List<String> completions) {
      throw new UnsupportedOperationException();
    }

    @Override
    public boolean interactive() {
      return true;
    }

    @Override
    public Progress start(String what, int total) {
      throw new UnsupportedOperationException();
    }
  }
}
