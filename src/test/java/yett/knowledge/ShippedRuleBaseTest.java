package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

class ShippedRuleBaseTest {
  @Test
  void the_shipped_rule_base_has_no_problems() {
    RuleBase base = Shipped.BASE;
    assertThat(base.causes()).hasSizeGreaterThanOrEqualTo(18);
  }
}
