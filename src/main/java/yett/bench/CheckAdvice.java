package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Tells the author of a new check from which other causes it tells the causes that it is for. */
final class CheckAdvice {
  /** Causes that a check separates by less are counted but not named; considered judgement. */
  private static final double HARDLY = 0.2;

  private CheckAdvice() {}

  /**
   * @param causes for which the check has rows. Each is compared with the others and with all that
   *     look like it; those from which the check tells it are named, best first
   * @param before the rule base without the check, for what looked alike so far
   */
  static List<String> on(Check check, List<String> causes, RuleBase before) {
    Likeness likeness = new Likeness(before);
    List<String> advice = new ArrayList<>();
    for (String name : causes) {
      Cause cause = before.causes().get(name);
      Map<String, Double> apart = new LinkedHashMap<>();
      before.causes().values().stream()
          .filter(other -> !other.id().equals(name) && !other.id().equals(Cause.NOT_IN_RULE_BASE))
          .filter(
              other ->
                  causes.contains(other.id()) || likeness.between(cause, other) >= Likeness.ALIKE)
          .forEach(
              other ->
                  apart.put(
                      other.id(), ToldApart.best(List.of(check), name, other.id()).distance()));
      advice.addAll(lines(name, apart));
    }
    return advice;
  }

  private static List<String> lines(String name, Map<String, Double> apart) {
    List<String> told =
        apart.entrySet().stream()
            .filter(e -> e.getValue() >= HARDLY)
            .sorted(Comparator.comparingDouble(e -> -e.getValue()))
            .map(e -> String.format(Locale.ROOT, "%s by %.0f %%", e.getKey(), 100 * e.getValue()))
            .toList();
    int rest = apart.size() - told.size();
    List<String> lines = new ArrayList<>();
    if (!told.isEmpty()) {
      lines.add(
          told.stream().collect(Collectors.joining(", ", "It tells " + name + " from ", ".")));
    }
    if (rest > 0) {
      lines.add(
          "It hardly tells %s from %s."
              .formatted(
                  name,
                  rest == 1 ? "one cause that looks like it" : rest + " causes that look like it"));
    }
    return lines;
  }
}
