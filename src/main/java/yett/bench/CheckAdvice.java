package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** What the writer of a new check ought to know: from what it tells the causes that it is for. */
final class CheckAdvice {
  private CheckAdvice() {}

  /**
   * @param causes that the check has rows of; it is held against all that look like one of them
   * @param before without the check, for what looked alike so far
   */
  static List<String> on(Check check, List<String> causes, RuleBase before) {
    Likeness likeness = new Likeness(before);
    List<String> advice = new ArrayList<>();
    for (String name : causes) {
      Cause cause = before.causes().get(name);
      List<String> told =
          before.causes().values().stream()
              .filter(
                  other -> !other.id().equals(name) && !other.id().equals(Cause.NOT_IN_RULE_BASE))
              .filter(other -> likeness.between(cause, other) >= Likeness.ALIKE)
              .map(other -> told(check, name, other.id()))
              .toList();
      if (!told.isEmpty()) {
        advice.add(
            told.stream().collect(Collectors.joining(", ", "It tells " + name + " from ", ".")));
      }
    }
    return advice;
  }

  private static String told(Check check, String one, String other) {
    ToldApart apart = ToldApart.best(List.of(check), one, other);
    return String.format(Locale.ROOT, "%s by %.0f %%", other, 100 * apart.distance());
  }
}
