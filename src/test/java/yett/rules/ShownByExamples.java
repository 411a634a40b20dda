package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.rules.Rules.Example;

/** What holds for every rule that an example shows; a subclass has the method {@code examples}. */
abstract class ShownByExamples {
  @ParameterizedTest
  @MethodSource("examples")
  void a_rule_speaks_where_it_should(Example example) {
    assertThat(Rules.speaking(Rules.judge(example.facts()))).contains(example.rule());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void what_was_taken_back_leaves_nothing_behind(Example example) {
    assertThat(Rules.afterTakingBack(example)).isEqualTo(Rules.judgeAfresh());
    assertThat(Rules.afterTakingBackEverything(example).conclusions()).isEmpty();
  }
}
