package yett.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.knowledge.Problem;

/** Finds the position of something in a file of rules (DRL), and the rule that it is in. */
public final class RulePlaces {
  /** The kind of problem of a rule that cannot be compiled. */
  public static final String KIND = "rule-not-compiled";

  private static final Pattern RULE = Pattern.compile("(?m)^[ \\t]*rule[ \\t]+\"([^\"\n]+)\"");
  private static final Pattern NAMED = Pattern.compile("\\bname='([^']+)'|\\brule \"([^\"]+)\"");
  private static final Pattern NO_FIELD =
      Pattern.compile(
          "Unable to (?:parse left part of expression|Analyse Expression|analyze expression):? *"
              + "((?:\\$\\w+ *: *)?(\\w+).*)");
  private static final Pattern PARSER = Pattern.compile("^\\[ERR \\d+\\] Line \\d+:\\d+ ");

  private final String text;
  private final List<MatchResult> heads;

  public RulePlaces(String text) {
    this.text = text;
    this.heads = RULE.matcher(text).results().toList();
  }

  /** The name of the rule at a line. */
  public Optional<String> ruleAt(int line) {
    return heads.stream()
        .filter(h -> lineOf(h.start()) <= line)
        .reduce((first, second) -> second)
        .map(h -> h.group(1));
  }

  /**
   * Splits the file into one text for each rule, by its name; each keeps what comes before the
   * first rule.
   */
  Map<String, String> apart() {
    Map<String, String> apart = new LinkedHashMap<>();
    for (int i = 0; i < heads.size(); i++) {
      int end = i + 1 < heads.size() ? heads.get(i + 1).start() : text.length();
      String head = text.substring(0, heads.get(0).start());
      // Pad with empty lines, so that the rule keeps its line numbers.
      String between = text.substring(heads.get(0).start(), heads.get(i).start());
      apart.put(
          heads.get(i).group(1),
          head + between.replaceAll("[^\n]", "") + text.substring(heads.get(i).start(), end));
    }
    return apart;
  }

  /** The line of an offset in the text, from 1. */
  public int lineOf(int offset) {
    return (int) text.substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
  }

  /**
   * The problem for a message of the compiler, with the line and the rule.
   *
   * @param line given by the compiler, 0 or less if none
   */
  Problem problem(String file, int line, String words) {
    String said = plain(PARSER.matcher(words.strip()).replaceFirst(""));
    int at = line > 0 ? line : line(said);
    String rule = ruleAt(at).map(r -> "rule \"" + r + "\": ").orElse("");
    String shown = said.contains("rule \"") ? said : rule + said;
    return new Problem(KIND, file, at, at > 0 ? 1 : 0, shown, "");
  }

  /** The compiler's words for a name that is not a field of its fact, in plain ones. */
  private static String plain(String said) {
    return NO_FIELD
        .matcher(said)
        .replaceFirst("\"$2\" is not a field of the fact in which it stands: $1");
  }

  /** The line at which a rule begins; 0 if there is no rule of that name. */
  int lineOf(String rule) {
    return heads.stream()
        .filter(h -> h.group(1).equals(rule))
        .findFirst()
        .map(h -> lineOf(h.start()))
        .orElse(0);
  }

  /** The line found from text that the compiler quotes, or from the name of the rule. */
  private int line(String said) {
    String quoted = said.substring(said.lastIndexOf(": ") < 0 ? 0 : said.lastIndexOf(": ") + 2);
    int at = said.contains(": ") && quoted.length() > 2 ? text.indexOf(quoted.strip()) : -1;
    if (at >= 0) {
      return lineOf(at);
    }
    Matcher named = NAMED.matcher(said);
    String name = named.find() ? Optional.ofNullable(named.group(1)).orElse(named.group(2)) : "";
    return lineOf(name);
  }
}
