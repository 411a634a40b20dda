package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Switches off rules (DRL, or rows of a table in text) that an add-on names. Only rules that merely
 * inform can be switched off; if several have one name, all of them are.
 *
 * @param tables texts of decision tables
 */
record RulesOff(List<RuleText> rules, Collection<String> tables) {
  static final String KIND = "rule";

  /** The column of a table that holds the names of its rows. */
  private static final String RULE = KIND;

  /** One cell of a line, with or without quotation marks, and the separator after it. */
  private static final Pattern CELL =
      Pattern.compile("\\G(?:\"((?:[^\"]|\"\")*+)\"|([^,]*+))(?:,|$)");

  /** All rows of all tables, each as column title to cell. */
  private List<Map<String, String>> rows() {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String text : tables) {
      List<List<String>> lines =
          text.lines().filter(line -> !line.isBlank()).map(RulesOff::cells).toList();
      for (List<String> line : lines) {
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < Math.min(line.size(), lines.get(0).size()); i++) {
          row.put(lines.get(0).get(i), line.get(i));
        }
        rows.add(row);
      }
    }
    return rows;
  }

  private static List<String> cells(String line) {
    return CELL.matcher(line)
        .results()
        .map(cell -> cell.group(1) == null ? cell.group(2) : cell.group(1))
        .map(String::strip)
        .toList();
  }

  /**
   * Whether a row changes odds, or gives a usual range that does not decide whether work is
   * stopped.
   */
  private static boolean onlyInforms(Map<String, String> row, Set<String> guarded) {
    return row.containsKey("odds")
        || row.containsKey("check") && !guarded.contains(row.get("check"));
  }

  /** Whether a rule may be switched off; if not, the problem is reported at the add-on's card. */
  boolean allows(AddOnCard manifest, String name, Set<String> guarded) {
    String field = "switches-off/" + KIND;
    List<RuleText> meant = rules.stream().filter(r -> r.name().equals(name)).toList();
    List<Map<String, String>> all = rows();
    List<Map<String, String>> rows = all.stream().filter(r -> name.equals(r.get(RULE))).toList();
    if (meant.isEmpty() && rows.isEmpty()) {
      Set<String> known =
          Stream.concat(
                  rules.stream().map(RuleText::name),
                  all.stream().map(r -> r.getOrDefault(RULE, "")))
              .collect(Collectors.toSet());
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
        || !rows.stream().allMatch(row -> onlyInforms(row, guarded))) {
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
