package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is left, tried and due, added up by hand. */
class SceneTest {
  private static final int BOTH = 2;

  @Test
  void what_is_left_costs_the_hand_over_and_every_repair_that_is_then_due() {
    Scene scene = Shop.sets(2).due(10, 4).repairs(1, 1).handOver(100).scene();

    assertThat(scene.leaving(0)).isEqualTo(110);
    assertThat(scene.leaving(1)).isEqualTo(104);
    assertThat(scene.leaving(BOTH)).isEqualTo(114);
  }

  @Test
  void a_gate_that_runs_costs_a_return_visit_only_if_something_stays_hidden() {
    Scene scene = Shop.sets(2).due(10, 4).repairs(1, 1).handOver(100).cured(30).scene();

    assertThat(scene.leaving(BOTH)).isEqualTo(44);
    assertThat(scene.leaving(3)).isZero();
  }

  @Test
  void trying_costs_the_way_to_the_repair_the_repair_the_way_to_the_retest_and_the_retest() {
    Workshop.Stand locked = new Workshop.Stand("locked-off", 5, 3, List.of(), List.of());
    Scene scene = Shop.faults(1).setUps(locked).repair(20, 1, 1.0).retest(0, 2).scene();

    assertThat(scene.trying(0, 0)).isEqualTo(5 + 20 + scene.workshop().change(1, 0) + 2);
    assertThat(scene.trying(0, 1)).isEqualTo(20 + scene.workshop().change(1, 0) + 2);
    assertThat(scene.afterTrying(0, 0)).isEqualTo(scene.workshop().after(1, 0));
  }
}
