package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.Problem;

/** What is wrong with a rule is told with its line and its name. */
class RuleCheckTest {
  private static final String HEAD =
      """
      package yett.rules.quay

      import yett.rules.Fact.Done
      import yett.rules.Fact.Given
      import yett.rules.Conclusion.FollowUp
      import static yett.rules.Reason.because

      rule "sound"
      @Because("so it is")
      when
        Done(repair == "tighten-chain")
      then
        insertLogical(new FollowUp("tighten-chain", "chain-sag", because(drools)));
      end

      """;

  private static String with(String condition, String consequence) {
    return HEAD
        + """
        rule "the other"
        @Because("so it is")
        when
          %s
        then
          %s
        end
        """
            .formatted(condition, consequence);
  }

  private static List<Problem> compiled(String text) {
    SortedMap<String, String> rules = new TreeMap<>();
    rules.put("leaf/follow-ups.drl", text);
    return RuleCheck.compiled(rules, new TreeMap<>());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Given(check == \"chain-sag\" | int x = 1; | 20",
        "Given(check = = \"chain-sag\") | int x = 1; | 19",
        "Given check == \"chain-sag\" | int x = 1; | 19"
      })
  void a_bracket_or_a_mark_that_is_missing_is_told_without_the_compiler(
      String condition, String consequence, int line) {
    List<Problem> problems = RuleCheck.grammar("leaf/follow-ups.drl", with(condition, consequence));
    assertThat(problems).isNotEmpty();
    assertThat(problems.get(0).line()).isEqualTo(line);
    assertThat(problems.get(0).message()).contains("\"the other\"").doesNotContain("ERR");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Given(check == \"chain-sag\", outcom == \"slack\") | int x = 1; | 19 | \"outcom\" is not a field",
        "Givne(check == \"chain-sag\") | int x = 1; | 19 | Givne",
        "Given(check == \"chain-sag\") | int x = \"a\"; | 21 | cannot convert",
        "Given(check == \"chain-sag\") | insertLogical(new FollowUpp(\"a\", \"b\")); | 21 | FollowUpp",
        "Given(check == \"chain-sag\") | insertLogical(new FollowUp(\"a\", because(drools))); | 21 | FollowUp",
        "Given(check == \"chain-sag\", epoch > \"x\") | int x = 1; | 16 | compiler fails"
      })
  void what_the_compiler_says_stands_in_the_rules_own_lines(
      String condition, String consequence, int line, String words) {
    List<Problem> problems = compiled(with(condition, consequence));
    assertThat(problems).isNotEmpty();
    Problem first = problems.get(0);
    assertThat(first.file()).isEqualTo("leaf/follow-ups.drl");
    assertThat(first.message())
        .contains("\"the other\"")
        .doesNotContain("Java source of", "Lambda");
    assertThat(first.message()).contains(words == null ? "" : words);
    assertThat(first.line()).isEqualTo(line);
  }

  @Test
  void sound_rules_have_no_problems() {
    assertThat(RuleCheck.grammar("a.drl", HEAD)).isEmpty();
    assertThat(compiled(HEAD)).isEmpty();
  }
}
