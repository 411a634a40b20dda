package yett.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yett.knowledge.Place;
import yett.testing.Shipped;

class WalkingOrderTest {
  private final WalkingOrder order = new WalkingOrder(Shipped.BASE);

  @Test
  void a_look_is_made_at_its_place() {
    for (var check : Shipped.BASE.checks().values()) {
      check.place().ifPresent(p -> assertThat(order.of(check)).isEqualTo(Place.all().indexOf(p)));
    }
  }

  @Test
  void what_has_no_place_is_measured_where_its_state_of_the_work_is() {
    assertThat(at("battery-rest-voltage")).isIn("cover-off", "cabinet-dead");
    assertThat(at("push-force")).isEqualTo("released");
  }

  private String at(String check) {
    return Place.all().get(order.of(Shipped.BASE.checks().get(check))).id();
  }
}
