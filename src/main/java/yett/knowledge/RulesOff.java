package yett.knowledge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.knowledge.AddOn.Manifest;

/** Rules (DRL, or rows of a table) that an add-on switches off by their name. */
final class RulesOff {
  static final String KIND = "rule";

  private static final Pattern RULE =
      Pattern.compile("(?m)^\\s*rule\\s+\"([^\"]+)\"([\\s\\S]*?)^\\s*end\\b");

  /** What keeps people from harm is concluded with these. */
  private static final Pattern PROTECTS =
      Pattern.compile("\\b(StopNow|Unavailable|FollowUp|Contradiction|Finding)\\(");

  private final Map<String, String> bodies = new LinkedHashMap<>();

  /**
   * @param rules and tables: texts by path
   */
  RulesOff(Map<String, String> rules, Map<String, String> tables) {
    for (String text : rules.values()) {
      Matcher matcher = RULE.matcher(text);
      while (matcher.find()) {
        bodies.put(matcher.group(1), matcher.group(2));
      }
    }
    for (String text : tables.values()) {
      text.lines().map(row -> row.split(",")[0]).forEach(name -> bodies.put(name, ""));
    }
  }

  /** Whether a rule may be switched off; if not, the manifest is told why. */
  boolean allows(Manifest manifest, String name) {
    String field = "switches-off/" + KIND;
    String body = bodies.get(name);
    if (body == null) {
      manifest
          .fields()
          .problem(
              field,
              "unknown-name",
              "there is no rule \"" + name + "\" to switch off",
              Names.advice(name, bodies.keySet()));
      return false;
    }
    if (PROTECTS.matcher(body).find()) {
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
