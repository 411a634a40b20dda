package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ShippedRuleBaseTest {
  @Test
  void the_shipped_rule_base_has_no_problems() {
    RuleBase base = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));
    assertThat(base.causes()).hasSizeGreaterThanOrEqualTo(18);
  }
}
