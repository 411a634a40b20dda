package yett.command.diagnose.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.ShippedKnowledge;

/** What of a sentence names its reading, and what tells of something else. */
class SpokenContextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          it is dead, batteries flat, 17.6 V, new in spring. mains is on \
            | batteries flat | it is dead, new in spring, mains is on
          battery at rest 12.6 V     | battery at rest | ''
          battery at rest, 12.6 V    | battery at rest | ''
          31 V at the supply, it is dark, nothing runs | at the supply | it is dark, nothing runs
          """)
  void the_clause_before_names_it(String line, String named, String rest) {
    SpokenReading reading =
        SpokenReading.best(SpokenReading.all(line, ShippedKnowledge.ruleBase())).orElseThrow();
    SpokenReading.Context context = reading.in(line);
    assertThat(context.named()).isEqualTo(named);
    assertThat(context.rest()).isEqualTo(rest);
  }
}
