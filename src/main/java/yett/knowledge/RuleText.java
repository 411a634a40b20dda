package yett.knowledge;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The text of a rule without comments. Text between two rules counts as part of the first.
 *
 * @param when its conditions
 * @param then its consequence
 */
record RuleText(String name, String when, String then) {
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?(?:\\*/|\\z)|//[^\n]*");
  private static final Pattern RULE = Pattern.compile("(?m)^[ \\t]*rule[ \\t]+\"([^\"\n]+)\"");
  private static final Pattern THEN = Pattern.compile("(?m)^[ \\t]*then\\b");
  private static final Pattern QUOTED = Pattern.compile("\"([^\"\n]*)\"");

  /** An action on facts in a rule's consequence. */
  private static final Pattern DEED =
      Pattern.compile("\\b(insert|insertLogical|modify|update|delete|retract)\\b");

  private static final Pattern HARMLESS =
      Pattern.compile("\\binsertLogical\\(\\s*new (Expectation|Odds|Remark)\\(");
  private static final Pattern EXPECTS = Pattern.compile("\\bnew Expectation\\(\\s*\"([^\"]*)\"");
  private static final Pattern ENDS = Pattern.compile("\\bStopNow\\(");
  private static final Pattern STOPS =
      Pattern.compile("\\b(StopNow|Forbidden|Withheld|Unavailable)\\(");

  /**
   * All rules in some files.
   *
   * @param files rule files (DRL)
   */
  static List<RuleText> of(Collection<String> files) {
    return files.stream().flatMap(text -> of(COMMENT.matcher(text).replaceAll(""))).toList();
  }

  private static Stream<RuleText> of(String file) {
    List<MatchResult> heads = RULE.matcher(file).results().toList();
    return IntStream.range(0, heads.size())
        .mapToObj(
            i -> {
              boolean last = i + 1 == heads.size();
              int to = last ? file.length() : heads.get(i + 1).start();
              String[] halves = THEN.split(file.substring(heads.get(i).end(), to), 2);
              return new RuleText(
                  heads.get(i).group(1), halves[0], halves.length < 2 ? "" : halves[1]);
            });
  }

  /** Whether the rule stops the work or forbids a step. */
  boolean stops() {
    return STOPS.matcher(then).find();
  }

  /** Whether the rule ends the interview to protect people. */
  boolean endsTheWork() {
    return ENDS.matcher(then).find();
  }

  /** The ids and words in its conditions. */
  Set<String> conditions() {
    return QUOTED.matcher(when).results().map(r -> r.group(1)).collect(Collectors.toSet());
  }

  /**
   * Whether the rule concludes only usual ranges, odds and remarks, each written out in it.
   *
   * @param guarded checks whose usual range decides whether the work is stopped
   */
  boolean onlyInforms(Set<String> guarded) {
    long deeds = DEED.matcher(then).results().count();
    Matcher expects = EXPECTS.matcher(then);
    return deeds > 0
        && deeds == HARMLESS.matcher(then).results().count()
        && expects.results().noneMatch(r -> guarded.contains(r.group(1)));
  }
}
