package yett.knowledge;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import yett.knowledge.AddOn.Manifest;

/**
 * Rules (DRL, or rows of a table in text) that an add-on switches off by their name. Only those can
 * be that do nothing but inform; of several with one name, all of them.
 */
final class RulesOff {
  static final String KIND = "rule";

  private final List<RuleText> rules;

  /** Cells of the rows by the first. */
  private final Map<String, Set<String>> rows = new HashMap<>();

  /**
   * @param tables texts of decision tables
   */
  RulesOff(List<RuleText> rules, Collection<String> tables) {
    this.rules = rules;
    for (String text : tables) {
      text.lines()
          .map(row -> row.split(",", -1))
          .forEach(
              cells ->
                  rows.merge(
                      cells[0].strip(), Set.copyOf(Arrays.asList(cells)), RulesOff::together));
    }
  }

  private static Set<String> together(Set<String> some, Set<String> more) {
    return Set.copyOf(Stream.concat(some.stream(), more.stream()).toList());
  }

  /** Whether a rule may be switched off; if not, the manifest is told why. */
  boolean allows(Manifest manifest, String name, Set<String> guarded) {
    String field = "switches-off/" + KIND;
    List<RuleText> meant = rules.stream().filter(r -> r.name().equals(name)).toList();
    Set<String> cells = rows.getOrDefault(name, Set.of());
    if (meant.isEmpty() && cells.isEmpty()) {
      Set<String> known =
          Set.copyOf(
              Stream.concat(rules.stream().map(RuleText::name), rows.keySet().stream()).toList());
      manifest
          .fields()
          .problem(
              field,
              "unknown-name",
              "there is no rule \"" + name + "\" to switch off",
              Names.advice(name, known));
      return false;
    }
    if (!meant.stream().allMatch(r -> r.onlyInforms(guarded))
        || cells.stream().anyMatch(guarded::contains)) {
      manifest
          .fields()
          .problem(
              field,
              "cannot-switch-off",
              "the rule \"" + name + "\" protects people or is always needed",
              "Only rules on usual ranges, odds and remarks can be switched off.");
      return false;
    }
    return true;
  }
}
