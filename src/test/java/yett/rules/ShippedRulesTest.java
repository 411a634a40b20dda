package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.RuleBase;

/** The program's own rules come from where it stands; those of others never get mixed with them. */
class ShippedRulesTest {
  private static final String FILE = "rules/core.drl";
  private static final String RULE = "an answer in words means the outcome that it names";

  @TempDir private Path folder;

  @Test
  void they_are_ready_and_nothing_is_copied() {
    RuleCache cache =
        new RuleCache(
            folder,
            folder.resolve("key"),
            () -> {
              throw new AssertionError("compiled anew");
            });

    assertThat(RuleEngine.of(Rules.BASE, cache).ruleNames()).contains(RULE);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_changed_copy_of_a_file_is_what_it_says_and_not_what_the_program_has_of_that_name() {
    String changed =
        Rules.BASE.rules().get(FILE).replace(RULE, "words are taken as they were said");
    RuleBase other =
        Rules.BASE.ruledBy(new TreeMap<>(Map.of(FILE, changed)), new TreeMap<>(), List.of());

    for (int start = 1; start <= 2; start++) { // compiled, then from the cache
      assertThat(RuleEngine.of(other, new RuleCache(folder)).ruleNames())
          .contains("words are taken as they were said")
          .doesNotContain(RULE);
    }
  }
}
