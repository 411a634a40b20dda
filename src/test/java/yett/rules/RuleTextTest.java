package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;

/** A rule that names a card or an outcome that does not exist would silently never fire. */
class RuleTextTest {
  private static final Pattern CHECK = Pattern.compile("check (?:==|in) ?(\\([^)]*\\)|\"[^\"]+\")");
  private static final Pattern OUTCOME =
      Pattern.compile("check == \"([^\"]+)\"[^)]*?outcome (?:==|in|!=) ?(\\([^)]*\\)|\"[^\"]+\")");
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");

  @Test
  void rules_name_only_checks_and_outcomes_that_exist() {
    List<String> wrong = new ArrayList<>();
    Rules.BASE
        .rules()
        .forEach(
            (file, text) -> {
              for (Matcher m = CHECK.matcher(text); m.find(); ) {
                quoted(m.group(1)).stream()
                    .filter(c -> !Rules.BASE.checks().containsKey(c))
                    .forEach(c -> wrong.add(file + ": check " + c));
              }
              for (Matcher m = OUTCOME.matcher(text); m.find(); ) {
                String check = m.group(1);
                Set<String> known = outcomes(check);
                quoted(m.group(2)).stream()
                    .filter(o -> !known.contains(o))
                    .forEach(o -> wrong.add(file + ": " + check + " " + o + ", known " + known));
              }
            });
    assertThat(wrong).isEmpty();
  }

  @Test
  void rules_name_only_causes_repairs_histories_complaints_stops_and_site_questions_that_exist() {
    List<String> wrong = new ArrayList<>();
    name("new Odds\\(", Rules.BASE.causes().keySet(), wrong);
    name("new StopNow\\(", Rules.BASE.stops().keySet(), wrong);
    name("new Expectation\\(", Rules.BASE.checks().keySet(), wrong);
    name("Done\\(repair == ", Rules.BASE.repairs().keySet(), wrong);
    name("Happened\\(history == ", Rules.BASE.histories().keySet(), wrong);
    name("Complained\\(complaint == ", Rules.BASE.checks().keySet(), wrong);
    name("Site\\(question == ", Rules.BASE.siteQuestions().keySet(), wrong);
    assertThat(wrong).isEmpty();
  }

  private static void name(String before, Set<String> known, List<String> wrong) {
    Pattern pattern = Pattern.compile(before + "\"([^\"]+)\"");
    Rules.BASE
        .rules()
        .forEach(
            (file, text) -> {
              for (Matcher m = pattern.matcher(text); m.find(); ) {
                if (!known.contains(m.group(1))) {
                  wrong.add(file + ": " + before + m.group(1));
                }
              }
            });
  }

  private static List<String> quoted(String text) {
    List<String> words = new ArrayList<>();
    for (Matcher m = QUOTED.matcher(text); m.find(); ) {
      words.add(m.group(1));
    }
    return words;
  }

  private static Set<String> outcomes(String check) {
    Check card = Rules.BASE.checks().get(check);
    return card == null
        ? Set.of()
        : card.outcomes().stream()
            .map(Check.Outcome::id)
            .collect(Collectors.toCollection(TreeSet::new));
  }
}
