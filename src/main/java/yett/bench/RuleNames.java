package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.knowledge.Check;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * Names of cards in the text of rules. A rule that names a check, an outcome or a site question
 * that does not exist compiles and never fires, so it is told as a problem.
 */
final class RuleNames {
  private static final String ONE_OR_SOME = "\\s*(?:==|!=|in)\\s*(\\([^)]{0,4000}\\)|\"[^\"\n]*\")";
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern OUTCOMES =
      Pattern.compile("\\bcheck\\s*==\\s*\"([^\"]+)\"[^)]{0,500}?\\boutcome" + ONE_OR_SOME);

  /** After so many nobody reads on, and more would only cost time. */
  private static final int MOST = 1_000;

  private final RuleBase base;
  private final List<Problem> problems = new ArrayList<>();

  private RuleNames(RuleBase base) {
    this.base = base;
  }

  static List<Problem> problems(RuleBase base) {
    RuleNames names = new RuleNames(base);
    base.rules().forEach(names::look);
    return names.problems;
  }

  private void look(String file, String text) {
    Map<String, Collection<String>> places =
        Map.of(
            "\\bcheck" + ONE_OR_SOME,
            base.checks().keySet(),
            "\\bquestion" + ONE_OR_SOME,
            base.siteQuestions().keySet(),
            "\\bhistory" + ONE_OR_SOME,
            base.histories().keySet(),
            "\\bcomplaint" + ONE_OR_SOME,
            base.checks().keySet(),
            "\\brepair" + ONE_OR_SOME,
            base.repairs().keySet(),
            "\\bnew Odds\\(\\s*(\"[^\"]*\")",
            base.causes().keySet(),
            "\\bnew StopNow\\(\\s*(\"[^\"]*\")",
            base.stops().keySet(),
            "\\bnew Expectation\\(\\s*(\"[^\"]*\")",
            base.checks().keySet());
    places.forEach(
        (pattern, known) -> {
          Matcher found = Pattern.compile(pattern).matcher(text);
          while (problems.size() < MOST && found.find()) {
            known(file, text, found, 1, known, "a card");
          }
        });
    Matcher outcomes = OUTCOMES.matcher(text);
    while (problems.size() < MOST && outcomes.find()) {
      Check check = base.checks().get(outcomes.group(1));
      if (check != null) {
        List<String> ids = check.outcomes().stream().map(Check.Outcome::id).toList();
        known(file, text, outcomes, 2, ids, "an outcome of \"" + check.id() + "\"");
      }
    }
  }

  private void known(
      String file, String text, Matcher at, int group, Collection<String> known, String what) {
    Matcher names = QUOTED.matcher(at.group(group));
    while (names.find()) {
      String name = names.group(1);
      if (!known.contains(name) && !base.switchedOff(name)) {
        int start = at.start(group) + names.start();
        String before = text.substring(0, start);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        problems.add(
            new Problem(
                "unknown-name-in-rule",
                file,
                line,
                start - before.lastIndexOf('\n'),
                "\"" + name + "\" is not " + what + ", so this rule never fires",
                Names.advice(name, known)));
      }
    }
  }
}
