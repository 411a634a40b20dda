package yett.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.rules.Conclusion;
import yett.rules.Fact;
import yett.rules.RulePlaces;

/**
 * Checks the names of facts and conclusions in the text of rules. The compiler finds a wrong one
 * too, but it looks only at rules that somebody trusts, and nobody should have to trust a typing
 * error first.
 */
final class RuleTypes {
  private static final Pattern IMPORT =
      Pattern.compile("(?m)^\\s*import\\s+(?!static\\b)([\\w.]+?)([A-Z]\\w*)\\s*;?\\s*$");
  private static final Pattern DECLARED =
      Pattern.compile("(?m)^\\s*declare\\s+(?:trait\\s+)?(\\w+)");
  private static final Pattern MADE =
      Pattern.compile("\\binsert(?:Logical)?\\(\\s*new\\s+([A-Z]\\w*)\\(");
  private static final Pattern MATCHED =
      Pattern.compile(
          "(?m)^\\s*(?:(?:not|exists|and|or)\\s+)?\\(?\\s*(?:\\$\\w+\\s*:\\s*)?([A-Z]\\w*)\\(");
  private static final Pattern CONDITIONS =
      Pattern.compile("(?s)\\bwhen\\b(.{0,20000}?)(?=\\n\\s*then\\b)");
  private static final List<String> OF_THE_RULES =
      List.of("yett.rules.Fact.", "yett.rules.Conclusion.");

  /** What rules may name besides; whether it is imported is left to the compiler. */
  private static final List<String> OTHERS =
      List.of(
          "String",
          "Object",
          "Number",
          "Integer",
          "Double",
          "Boolean",
          "List",
          "Map",
          "Set",
          "Cause",
          "Check",
          "History",
          "Repair",
          "SetUp",
          "SiteQuestion",
          "Stop");

  private final String file;
  private final String text;
  private final RulePlaces places;
  private final Set<String> known = new TreeSet<>();
  private final List<Problem> problems = new ArrayList<>();

  private RuleTypes(String file, String text) {
    this.file = file;
    this.text = text;
    this.places = new RulePlaces(text);
  }

  /**
   * @param text without its comments
   */
  static List<Problem> problems(String file, String text) {
    RuleTypes types = new RuleTypes(file, text);
    types.look();
    return types.problems;
  }

  private void look() {
    Set<String> all = names();
    Matcher imports = IMPORT.matcher(text);
    while (imports.find()) {
      known.add(imports.group(2));
      if (OF_THE_RULES.contains(imports.group(1)) && !all.contains(imports.group(2))) {
        problem(imports.start(2), imports.group(2), "is no fact or conclusion of rules", all);
      }
    }
    DECLARED.matcher(text).results().forEach(d -> known.add(d.group(1)));
    known.addAll(all);
    known.addAll(OTHERS);
    uses(MADE.matcher(text), 0);
    Matcher conditions = CONDITIONS.matcher(text);
    while (conditions.find()) {
      uses(MATCHED.matcher(conditions.group(1)), conditions.start(1));
    }
  }

  private static Set<String> names() {
    return Stream.of(Fact.class, Conclusion.class)
        .flatMap(kind -> Arrays.stream(kind.getPermittedSubclasses()))
        .map(Class::getSimpleName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void uses(Matcher used, int from) {
    while (used.find()) {
      if (!known.contains(used.group(1))) {
        problem(from + used.start(1), used.group(1), "is no fact or conclusion", known);
      }
    }
  }

  private void problem(int at, String name, String wrong, Set<String> near) {
    int line = places.lineOf(at);
    String rule = places.ruleAt(line).map(r -> "rule \"" + r + "\"").orElse("this file");
    problems.add(
        new Problem(
            "unknown-type-in-rule",
            file,
            line,
            at - text.substring(0, at).lastIndexOf('\n'),
            "\"" + name + "\" " + wrong + ", so " + rule + " cannot be compiled",
            Names.advice(name, near)));
  }
}
