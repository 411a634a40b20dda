package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.knowledge.Stop;
import yett.rules.RulePlaces;

/**
 * Checks the names of cards in the text of rules. A rule that names a check, an outcome or a site
 * question that does not exist compiles but never fires, so it is reported as a problem.
 */
final class RuleNames {
  private static final String ONE_OR_SOME = "\\s*(?:==|!=|in)\\s*(\\([^)]{0,4000}\\)|\"[^\"\n]*\")";
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern OUTCOMES =
      Pattern.compile("\\bcheck\\s*==\\s*\"([^\"]+)\"[^)]{0,500}?\\boutcome" + ONE_OR_SOME);

  private static final Pattern CHOICES =
      Pattern.compile("\\bquestion\\s*==\\s*\"([^\"]+)\"[^)]{0,500}?\\bchoice" + ONE_OR_SOME);
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?(?:\\*/|\\z)|//[^\n]*");

  /** Greatest number of problems reported; nobody reads more, and they would only take time. */
  private static final int MOST = 1_000;

  private final RuleBase base;
  private final List<Problem> problems = new ArrayList<>();

  private RuleNames(RuleBase base) {
    this.base = base;
  }

  static List<Problem> problems(RuleBase base) {
    RuleNames names = new RuleNames(base);
    base.rules()
        .forEach(
            (file, text) -> {
              names.look(file, withoutComments(text));
              names.problems.addAll(RuleTypes.problems(file, withoutComments(text)));
            });
    return names.problems;
  }

  /** The text with blanks instead of comments, so that all positions stay the same. */
  private static String withoutComments(String text) {
    return COMMENT.matcher(text).replaceAll(comment -> comment.group().replaceAll("[^\n]", " "));
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
    Map<String, Collection<String>> more =
        Map.of(
            "\\bsetUp" + ONE_OR_SOME,
            base.setUps().keySet(),
            "\\bstop" + ONE_OR_SOME,
            base.stops().keySet(),
            "\\bcause" + ONE_OR_SOME,
            base.causes().keySet(),
            "\\bnew Forbidden\\(\\s*(\"[^\"]*\")",
            base.setUps().keySet(),
            "\\bnew Withheld\\(\\s*(\"[^\"]*\")",
            Stop.WITHHELD,
            "\\bnew Unavailable\\(\\s*(\"[^\"]*\")",
            work(),
            "\\bnew FollowUp\\(\\s*(\"[^\"]*\")",
            origins(),
            "\\bnew FollowUp\\([^,;]{1,200},\\s*(\"[^\"]*\")",
            work());
    Stream.of(places, more).forEach(some -> look(file, text, some));
    Matcher choices = CHOICES.matcher(text);
    while (problems.size() < MOST && choices.find()) {
      SiteQuestion question = base.siteQuestions().get(choices.group(1));
      if (question != null) {
        Set<String> ids = question.choices().keySet();
        known(file, text, choices, 2, ids, "a choice of \"" + question.id() + "\"");
      }
    }
    outcomes(file, text);
  }

  /** Ids of everything that can make work necessary. */
  private Collection<String> origins() {
    return Stream.concat(base.repairs().keySet().stream(), base.histories().keySet().stream())
        .toList();
  }

  /** Ids of everything that can be done or asked. */
  private Collection<String> work() {
    Set<String> work = new HashSet<>(base.checks().keySet());
    work.addAll(base.repairs().keySet());
    return work;
  }

  private void look(String file, String text, Map<String, Collection<String>> places) {
    places.forEach(
        (pattern, known) -> {
          Matcher found = Pattern.compile(pattern).matcher(text);
          while (problems.size() < MOST && found.find()) {
            known(file, text, found, 1, known, "a card");
          }
        });
  }

  private void outcomes(String file, String text) {
    Matcher outcomes = OUTCOMES.matcher(text);
    while (problems.size() < MOST && outcomes.find()) {
      Check check = base.checks().get(outcomes.group(1));
      if (check != null) {
        List<String> ids = check.outcomes().stream().map(Check.Outcome::id).toList();
        known(file, text, outcomes, 2, ids, "an outcome of \"" + check.id() + "\"");
      }
    }
  }

  /** What happens to a rule that names something that does not exist. */
  private static String inVain(Matcher at) {
    return at.group().startsWith("new ") ? "concludes it to no effect" : "never fires";
  }

  private void known(
      String file, String text, Matcher at, int group, Collection<String> known, String what) {
    Matcher names = QUOTED.matcher(at.group(group));
    while (names.find()) {
      String name = names.group(1);
      if (!known.contains(name) && !base.switchedOff(name)) {
        int start = at.start(group) + names.start();
        String before = text.substring(0, start);
        RulePlaces places = new RulePlaces(text);
        int line = places.lineOf(start);
        String rule = places.ruleAt(line).map(r -> "rule \"" + r + "\"").orElse("this rule");
        problems.add(
            new Problem(
                "unknown-name-in-rule",
                file,
                line,
                start - before.lastIndexOf('\n'),
                "\"" + name + "\" is not " + what + ", so " + rule + " " + inVain(at),
                Names.advice(name, known)));
      }
    }
  }
}
