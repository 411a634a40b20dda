package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LookalikesTest {
  private static final CausalModel MODEL =
      CausalModel.builder()
          .cause("a", 0.1)
          .cause("b", 0.1)
          .cause("c", 0.1)
          .check(
              "lamp",
              new double[] {1, 0},
              Map.of("a", new double[] {0.2, 0.8}, "b", new double[] {0.5, 0.5}))
          .check("noise", new double[] {1, 0}, Map.of("c", new double[] {0.4, 0.6}))
          .build();

  @Test
  void the_best_check_counts() {
    List<Lookalikes.Pair> pairs = Lookalikes.among(MODEL, Set.of("lamp", "noise"), 0.7);
    assertThat(pairs).extracting(Lookalikes.Pair::one).containsExactly("a", "b");
    assertThat(pairs.get(0).check()).isEqualTo("lamp");
    assertThat(pairs.get(0).distance()).isCloseTo(0.3, within(1e-12));
    // b and c: the lamp tells them apart by 0.5, the noise by 0.6.
    assertThat(pairs.get(1).check()).isEqualTo("noise");
    assertThat(pairs.get(1).distance()).isCloseTo(0.6, within(1e-12));
  }

  @Test
  void causes_that_show_on_no_check_look_the_same() {
    assertThat(Lookalikes.among(MODEL, Set.of("noise"), 0.1))
        .containsExactly(new Lookalikes.Pair("a", "b", "", 0));
  }

  @Test
  void the_most_alike_come_first_whatever_their_order_in_the_model() {
    CausalModel turned =
        CausalModel.builder()
            .cause("c", 0.1)
            .cause("b", 0.1)
            .cause("a", 0.1)
            .check(
                "lamp",
                new double[] {1, 0},
                Map.of("a", new double[] {0.2, 0.8}, "b", new double[] {0.5, 0.5}))
            .build();
    assertThat(Lookalikes.among(turned, Set.of("lamp"), 1))
        .extracting(p -> p.one() + p.other())
        .containsExactly("ba", "cb", "ca"); // by 0.3, 0.5 and 0.8
  }

  @Test
  void what_a_check_tells_apart_by_as_much_as_asked_is_no_pair() {
    assertThat(Lookalikes.among(MODEL, Set.of("noise"), 0.6))
        .extracting(Lookalikes.Pair::distance)
        .containsExactly(0.0);
  }
}
