package yett.command.diagnose.told;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.saying.DangerSayings.Danger;

/**
 * Of two forms of one danger, the graver, which its card has first: somebody who is shut in and
 * needs help comes before somebody who needs none. One answer is stored for both.
 */
public final class GraverForm {
  /** Whoever says so needs help, whatever else they say. */
  private static final Pattern CRY =
      Pattern.compile(
          "(?i)\\b(?:help|hurry|quick(?:ly)?|emergency|urgent(?:ly)?|scream(?:s|ing)?|cry(?:ing)?"
              + "|panick?(?:s|ing|ed)?|can['\u2019]?t breathe|get (?:him|her|them|me|us) out)\\b");

  private static final Pattern NO_HELP =
      Pattern.compile(
          "(?i)\\b(?:no|not|nobody|without|any|need['\u2019]?n?t)(?: \\w+){0,2} help\\b");

  private static final String SHUT_IN = "danger-shut-in";

  private GraverForm() {}

  /** The graver of each danger. */
  public static Set<Danger> of(Collection<Danger> dangers) {
    Map<String, Danger> graver = new LinkedHashMap<>();
    dangers.forEach(d -> graver.merge(d.check().id(), d, (a, b) -> rank(a) <= rank(b) ? a : b));
    return dangers.stream()
        .filter(graver.values()::contains)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * That somebody who is shut in needs help, if they cry for it or if there is another danger
   * beside.
   *
   * @param heard the dangers that may be meant
   * @param list all dangers
   */
  public static List<Danger> beside(Collection<Danger> heard, List<Danger> list, String words) {
    boolean shutIn = heard.stream().anyMatch(d -> d.check().id().equals(SHUT_IN));
    boolean other = heard.stream().anyMatch(d -> !d.check().id().equals(SHUT_IN));
    boolean cry = CRY.matcher(words).find() && !NO_HELP.matcher(words).find();
    return shutIn && (other || cry)
        ? list.stream().filter(d -> d.check().id().equals(SHUT_IN)).limit(1).toList()
        : List.of();
  }

  private static int rank(Danger danger) {
    Check check = danger.check();
    return check.indexOf(danger.outcome().id());
  }
}
