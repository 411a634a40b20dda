package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

class ShippedRuleBaseTest {
  private static final Pattern POWER = Pattern.compile("switch the (mains|supply) on|Connect the");

  @Test
  void the_shipped_rule_base_has_no_problems() {
    RuleBase base = Shipped.BASE;
    assertThat(base.causes()).hasSizeGreaterThanOrEqualTo(18);
  }

  /** The leaf may look for its reference as soon as it has power. */
  @Test
  void people_are_kept_away_and_somebody_is_at_the_stop_before_power_comes_back() {
    for (SetUp setUp : Shipped.BASE.setUps().values()) {
      boolean kept = false;
      for (String step : setUp.leave()) {
        assertThat(kept || !POWER.matcher(step).find()).as(setUp.id() + ": " + step).isTrue();
        kept |= step.contains("arriers") && step.contains("one person at the stop button");
      }
    }
  }

  /** Whatever is set up around the opening is taken away by the last step of a case. */
  @Test
  void what_keeps_people_away_is_taken_away_again() {
    SetUp inUse = Shipped.BASE.setUps().get(SetUp.IN_USE);
    assertThat(String.join(" ", inUse.enter()))
        .contains("barriers", "cones", "signs", "the person at the stop button steps back");
    assertThat(Shipped.BASE.setUps().values())
        .filteredOn(s -> s.within().isEmpty() && !s.isCondition() && !s.equals(inUse))
        .allSatisfy(s -> assertThat(inUse.excludes()).contains(s.id()));
  }

  @Test
  void the_marker_is_moved_by_hand_only_with_the_leaf_released() {
    assertThat(Shipped.BASE.checks().get("marker-gap").needs()).contains("leaf-released");
    assertThat(List.of("set-sensor-gap", "fit-marker", "reseat-marker"))
        .allSatisfy(
            id -> assertThat(Shipped.BASE.repairs().get(id).needs()).contains("leaf-released"));
  }
}
