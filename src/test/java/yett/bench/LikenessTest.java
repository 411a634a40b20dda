package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

class LikenessTest {
  private RuleBase base;

  @BeforeEach
  void two_causes_on_two_checks() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("src/test/resources/every-field")).files());
    files.put(
        "more.yaml",
        cause("one")
            + cause("two")
            + cause("three")
            + check("first", "  one: {so: 0.2, odd: 0.8}\n  two: {so: 0.6, odd: 0.4}\n")
            + check("second", "  two: {so: 0.4, odd: 0.6}\n  three: {so: 0.1, odd: 0.9}\n"));
    base = RuleBase.read(() -> files);
  }

  private static String cause(String id) {
    return """
        cause: %s
        name: Cause %s
        prior: 0.01
        removed-by: {charge-batteries: 0.5}
        source: considered judgement
        ---
        """
        .formatted(id, id);
  }

  private static String check(String id, String rows) {
    return """
        check: %s
        ask: What is it like?
        minutes: 1
        who: caller
        outcomes: {so: as usual, odd: not as usual}
        likelihood:
        %sotherwise: {so: 0.9, odd: 0.1}
        source: considered judgement
        ---
        """
        .formatted(id, rows);
  }

  private double between(String one, String other) {
    return new Likeness(base).between(base.causes().get(one), base.causes().get(other));
  }

  /**
   * By hand, with the definition of Ruzicka's index (sum of the lesser over sum of the greater;
   * from memory): beyond a sound gate "one" shows 0.7 on the first check; "two" 0.3 there and 0.5
   * on the second; "three" 0.8 on the second.
   */
  @Test
  void what_both_show_is_set_against_what_either_shows() {
    assertThat(between("one", "two")).isCloseTo(0.3 / (0.7 + 0.5), within(1e-12));
    assertThat(between("two", "three")).isCloseTo(0.5 / (0.3 + 0.8), within(1e-12));
    assertThat(between("one", "three")).isZero();
    assertThat(between("one", "one")).isEqualTo(1);
    assertThat(between("two", "one")).isEqualTo(between("one", "two"));
  }
}
