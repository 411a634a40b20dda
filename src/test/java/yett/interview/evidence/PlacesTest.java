package yett.interview.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What was brought about stands behind what brought it about, however long the chain. */
class PlacesTest {
  private static final List<String> CAUSES =
      List.of("leakage-trips-supply", "mains-missing", "batteries-low");

  private static Places places(double[] chances, double... roots) {
    return new Places(Shipped.BASE, CAUSES, chances, roots);
  }

  @Test
  void flat_batteries_stand_behind_the_leak_that_trips_the_mains() {
    Places places = places(new double[] {0.9, 0.95, 0.99}, 0.9, 0.02, 0.04);

    assertThat(CAUSES).allSatisfy(c -> assertThat(places.of(c)).isEqualTo(0.9));
    assertThat(CAUSES).extracting(places::behind).containsExactly(0, 1, 2);
  }

  @Test
  void what_probably_came_by_itself_stands_by_its_own_chance() {
    Places places = places(new double[] {0.1, 0.95, 0.99}, 0.1, 0.9, 0.6);

    assertThat(CAUSES).extracting(places::of).containsExactly(0.1, 0.95, 0.99);
    assertThat(CAUSES).extracting(places::behind).containsOnly(0);
  }

  @Test
  void a_consequence_that_is_hardly_there_keeps_its_low_place() {
    Places places = places(new double[] {0.9, 0.95, 0.2}, 0.9, 0.02, 0.04);

    assertThat(places.of("batteries-low")).isEqualTo(0.2);
  }
}
