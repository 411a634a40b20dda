package yett.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.Repair;
import yett.testing.Repairs;

/** Chances added up by hand. */
class VanTest {
  private static final Comparator<Double> CLOSE =
      (a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b);

  @Test
  void a_part_is_needed_as_often_as_its_repairs_are_done() {
    Van van = new Van(List.of(way(0.5, "fuse"), way(0.3, "fuse", "chain"), way(0.2)));
    assertThat(van.parts())
        .containsExactly(new DispatchSheet.Item("fuse", 0.8), new DispatchSheet.Item("chain", 0.3));
  }

  @Test
  void the_van_holds_what_covers_nine_in_ten_and_nothing_needless() {
    Van van = new Van(List.of(way(0.5, "fuse"), way(0.25, "chain"), way(0.17), way(0.08, "motor")));
    DispatchSheet.Cover cover = van.cover(0.9);
    assertThat(cover.names()).containsExactly("fuse", "chain");
    assertThat(cover.covers()).isEqualTo(0.92, within(1e-12));
  }

  @Test
  void it_says_what_each_part_gains_and_what_is_left_out() {
    Van van = new Van(List.of(way(0.5, "fuse"), way(0.25, "chain"), way(0.17), way(0.08, "motor")));
    DispatchSheet.Cover cover = van.cover(0.9);
    assertThat(cover.without()).isEqualTo(0.17, within(1e-12));
    assertThat(cover.parts())
        .extracting(DispatchSheet.Packed::covers)
        .usingElementComparator(CLOSE)
        .containsExactly(0.67, 0.92);
    assertThat(cover.parts())
        .extracting(DispatchSheet.Packed::chance, DispatchSheet.Packed::price)
        .containsExactly(tuple(0.5, 5.0), tuple(0.25, 5.0));
    assertThat(cover.left()).containsExactly(new DispatchSheet.Item("motor", 0.08));
  }

  @Test
  void parts_that_are_needed_together_come_together() {
    Van van = new Van(List.of(way(0.95, "chain", "sprocket"), way(0.05)));
    assertThat(van.cover(0.9).names()).containsExactly("chain", "sprocket");
  }

  @Test
  void what_nobody_knows_is_told_beside_what_is_covered() {
    Van van = new Van(List.of(way(0.8, "fuse"), new Scenario(0.2, false, Set.of())));
    DispatchSheet.Cover cover = van.cover(0.9);
    assertThat(cover.names()).containsExactly("fuse");
    assertThat(cover.covers()).isEqualTo(1);
    assertThat(cover.unknown()).isEqualTo(0.2, within(1e-12));
  }

  @Test
  void where_nothing_needs_a_part_none_is_brought() {
    assertThat(new Van(List.of(way(1))).cover(0.9).parts()).isEmpty();
  }

  private static Scenario way(double chance, String... parts) {
    return new Scenario(
        chance,
        true,
        Arrays.stream(parts).map(VanTest::repair).collect(Collectors.toUnmodifiableSet()));
  }

  private static Repair repair(String part) {
    return Repairs.of("renew-" + part, Map.of(), List.of(new Repair.Part(part, 5, "")));
  }
}
