package yett.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.bench.Anomaly.Found;
import yett.bench.Anomaly.Kind;
import yett.knowledge.RuleBase;
import yett.rules.DecisionTables;

/**
 * Finds weak places in the text of rules and in rows of tables: the same conditions twice,
 * conditions that those of another rule cover, and a reading that would have to be in two ranges.
 * Conditions that are written differently but mean the same are not found.
 */
final class RuleAnomalies {
  private static final Pattern RULE =
      Pattern.compile("(?ms)^rule\\s+\"([^\"]+)\"(.*?)\\bwhen\\b(.*?)\\bthen\\b(.*?)^end\\b");
  private static final Pattern COMMENT = Pattern.compile("(?m)//.*$");
  private static final Pattern VARIABLE = Pattern.compile("\\$\\w+");
  private static final Pattern PATTERN = Pattern.compile("\\w+\\([^()]*\\)");
  private static final Pattern BOUND =
      Pattern.compile("\\bvalue\\s*(<=|>=|<|>)\\s*(-?\\d+(?:\\.\\d+)?)");
  private static final Pattern EQUAL =
      Pattern.compile("\\b(check|outcome|question|choice)\\s*==\\s*\"([^\"]+)\"");

  /** A rule with its variables replaced by numbers, so that their names do not matter. */
  private record Text(String name, Set<String> conditions, String consequence, String whole) {}

  private final List<Text> rules = new ArrayList<>();
  private final List<Anomaly> found = new ArrayList<>();

  private RuleAnomalies(RuleBase base) {
    DecisionTables.readable(base).stream()
        .map(r -> new Text(r.reason().rule(), r.conditions(), r.consequence(), ""))
        .forEach(rules::add);
    for (String text : base.rules().values()) {
      Matcher rule = RULE.matcher(COMMENT.matcher(text).replaceAll(""));
      while (rule.find()) {
        rules.add(numbered(rule.group(1), rule.group(3), rule.group(4)));
      }
    }
  }

  static List<Anomaly> of(RuleBase base) {
    RuleAnomalies anomalies = new RuleAnomalies(base);
    anomalies.rules.forEach(anomalies::neverHolds);
    for (Text one : anomalies.rules) {
      for (Text other : anomalies.rules) {
        if (one != other) {
          anomalies.compare(one, other);
        }
      }
    }
    return anomalies.found;
  }

  private static Text numbered(String name, String when, String then) {
    Map<String, String> numbers = new HashMap<>();
    String text =
        VARIABLE
            .matcher(when + "\u0000" + then)
            .replaceAll(
                v ->
                    Matcher.quoteReplacement(
                        numbers.computeIfAbsent(v.group(), n -> "$" + numbers.size())))
            .replaceAll("[ \t]+", " ");
    String[] halves = text.split("\u0000", 2);
    Set<String> conditions = new TreeSet<>();
    Arrays.stream(halves[0].split("\n"))
        .map(String::strip)
        .filter(l -> !l.isEmpty())
        .forEach(conditions::add);
    return new Text(name, conditions, halves[1].strip(), when);
  }

  private void compare(Text one, Text other) {
    if (!one.consequence().equals(other.consequence())) {
      return;
    }
    boolean same = one.conditions().equals(other.conditions());
    if (same && one.name().compareTo(other.name()) < 0) {
      add(Kind.REDUNDANT, one.name(), "says the same as the rule \"" + other.name() + "\"");
    } else if (!same && one.conditions().containsAll(other.conditions())) {
      add(
          Kind.SUBSUMED,
          one.name(),
          "whenever it holds, the rule \"" + other.name() + "\" has concluded the same");
    }
  }

  private void neverHolds(Text rule) {
    for (MatchResult pattern : PATTERN.matcher(rule.whole()).results().toList()) {
      if (noReading(pattern.group()) || twoWords(pattern.group())) {
        add(
            Kind.UNREACHABLE,
            rule.name(),
            "no fact can meet " + pattern.group().replaceAll("\\s+", " "));
      }
    }
  }

  /** Whether the bounds on a reading leave no value between them. */
  private static boolean noReading(String pattern) {
    if (pattern.contains("||")) {
      return false;
    }
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    boolean open = false;
    for (Matcher bound = BOUND.matcher(pattern); bound.find(); ) {
      double value = Double.parseDouble(bound.group(2));
      if (bound.group(1).startsWith("<")) {
        most = Math.min(most, value);
      } else {
        least = Math.max(least, value);
      }
      open |= bound.group(1).length() == 1;
    }
    return least > most || least == most && open;
  }

  /** Whether a field would have to equal two different words. */
  private static boolean twoWords(String pattern) {
    if (pattern.contains("||")) {
      return false;
    }
    Map<String, String> words = new LinkedHashMap<>();
    for (Matcher equal = EQUAL.matcher(pattern); equal.find(); ) {
      String before = words.put(equal.group(1), equal.group(2));
      if (before != null && !before.equals(equal.group(2))) {
        return true;
      }
    }
    return false;
  }

  private void add(Kind kind, String rule, String message) {
    found.add(new Anomaly(kind, Found.PROVED, "rule \"" + rule + "\"", message));
  }
}
