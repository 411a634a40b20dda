package yett.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Sentences of like meaning lie near each other, whatever their words. */
class MeaningsTest {
  private static Meanings meanings;

  @BeforeAll
  static void load() throws NoModelException {
    meanings = Meanings.load();
  }

  private static double near(String one, String other) {
    return Meanings.nearness(meanings.of(one), meanings.of(other));
  }

  @Test
  void a_direction_has_the_length_1() {
    float[] direction = meanings.of("a sentence that no card has");
    assertThat(direction).hasSize(384);
    assertThat(Meanings.nearness(direction, direction)).isBetween(0.999, 1.001);
  }

  @Test
  void what_means_the_same_is_nearer_than_what_does_not() {
    double same = near("the gate does not open", "we cannot get it to open");
    double other = near("the gate does not open", "the gate moves slowly");
    double strange = near("the gate does not open", "our cat likes fish");
    assertThat(List.of(same, other, strange)).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(strange).isLessThan(0.3);
  }

  @Test
  void what_the_build_worked_out_is_what_the_model_says() throws NoModelException {
    Meanings fresh = Meanings.load(java.util.Map.of());
    String known = "it will not open";
    assertThat(Meanings.nearness(meanings.of(known), fresh.of(known))).isGreaterThan(0.999);
  }
}
