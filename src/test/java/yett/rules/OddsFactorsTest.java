package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.rules.Conclusion.Odds;
import yett.rules.Rules.Example;

/**
 * By how much a rule moves the odds of a cause is a considered judgement with no book to check it
 * against. So it is written down a second time, as in double-entry bookkeeping: a factor that
 * changes by accident, or stands at another cause, no longer agrees.
 */
class OddsFactorsTest {
  private static final Path WRITTEN = Path.of("src/test/resources/odds.csv");

  @Test
  void every_rule_moves_the_causes_that_are_written_down_by_their_factors() throws IOException {
    List<String> written;
    try (Stream<String> lines = Files.lines(WRITTEN)) {
      written = lines.skip(1).toList();
    }
    assertThat(written).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    assertThat(moved().stream().map(OddsFactorsTest::line))
        .containsExactlyInAnyOrderElementsOf(written);
  }

  @Test
  void factors_are_judgements_between_a_fifth_and_ten() {
    assertThat(moved())
        .isNotEmpty()
        .allSatisfy(o -> assertThat(o.factor()).isBetween(0.2, 10.0).isNotEqualTo(1.0));
  }

  /** All odds of all rules on odds, each once. */
  private static Collection<Odds> moved() {
    Set<String> own = Rules.of("odds");
    return Stream.of(
            OddsRulesTest.examples(),
            ElectricalRulesTest.odds(),
            MechanicalRulesTest.examples(),
            DeviceRulesTest.odds())
        .<Example>flatMap(s -> s)
        .flatMap(e -> Rules.judge(e.facts()).odds().stream())
        .filter(o -> own.contains(o.reason().rule()))
        .collect(Collectors.toMap(OddsFactorsTest::line, o -> o, (a, b) -> a))
        .values();
  }

  private static String line(Odds odds) {
    String factor = Double.toString(odds.factor()).replaceFirst("\\.0$", "");
    return String.join("|", odds.reason().rule(), odds.cause(), factor);
  }
}
