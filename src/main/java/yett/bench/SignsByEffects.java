package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Works out what a cause shows by the effects that its author chose. */
final class SignsByEffects {
  private static final int MOST_COMPLAINTS = 4;
  private static final int MOST_CHECKS = 5;
  private static final int MOST_SHARING = 6;

  private final RuleBase base;
  private final Map<String, Double> picked;
  private final Map<String, double[]> rows;

  /**
   * @param picked effects with their chances; may be empty
   */
  SignsByEffects(RuleBase base, Map<String, Double> picked) {
    this.base = base;
    this.picked = picked;
    this.rows = base.effectRows().rows(picked, base.checks());
  }

  /** The row on a check that follows from the effects, if one does. */
  Optional<double[]> row(Check check) {
    return Optional.ofNullable(rows.get(check.id()));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * The most important conclusions: complaints, what checks show, and other causes with the same
   * effects.
   */
  List<String> told() {
    List<String> lines = new ArrayList<>();
    String said = told(c -> c.kind() == Check.Kind.COMPLAINT, MOST_COMPLAINTS);
    String seen = told(c -> c.kind() == Check.Kind.CHECK && !c.danger(), MOST_CHECKS);
    String sharing = sharing();
    lines.add(said.isEmpty() ? "" : "So people say: " + said + ".");
    lines.add(seen.isEmpty() ? "" : "So checks show: " + seen + ".");
    lines.add(sharing.isEmpty() ? "" : "The same comes of: " + sharing + ".");
    lines.removeIf(String::isEmpty);
    return lines;
  }

  private String told(Predicate<Check> kind, int most) {
    return rows.keySet().stream()
        .map(base.checks()::get)
        .filter(kind)
        .sorted(
            Comparator.comparingDouble(c -> -Neighbours.distance(rows.get(c.id()), c.otherwise())))
        .limit(most)
        .map(c -> told(c, rows.get(c.id())))
        .collect(Collectors.joining("; "));
  }

  /** The outcome whose chance is furthest above that on a sound gate. */
  private static String told(Check check, double[] row) {
    int most =
        IntStream.range(0, row.length)
            .boxed()
            .max(Comparator.comparingDouble(o -> row[o] - check.otherwise()[o]))
            .orElseThrow();
    String outcome = check.kind() == Check.Kind.COMPLAINT ? "" : " " + outcome(check, most);
    return String.format(
        Locale.ROOT,
        "%s%s %.2f (sound gate %.2f)",
        check.id(),
        outcome,
        row[most],
        check.otherwise()[most]);
  }

  private static String outcome(Check check, int outcome) {
    return check.outcomes().get(outcome).id();
  }

  /**
   * Complaints that follow with more than an even chance, the most likely first.
   *
   * @param atLeastOne whether to return the most likely one if there are none
   */
  List<String> complaints(boolean atLeastOne) {
    Map<String, Double> said = new LinkedHashMap<>();
    rows.forEach(
        (id, row) -> {
          Check check = base.checks().get(id);
          if (check.kind() == Check.Kind.COMPLAINT) {
            said.put(id, row[check.indexOf(Check.SAID)]);
          }
        });
    List<String> ids =
        said.keySet().stream()
            .sorted(Comparator.comparingDouble((String id) -> -said.get(id)))
            .toList();
    long often = said.values().stream().filter(chance -> chance >= 0.5).count();
    return ids.stream().limit(Math.max(often, atLeastOne ? 1 : 0)).toList();
  }

  /** Checks whose most likely outcome is not the ordinary one, each with that outcome. */
  Map<String, String> telling() {
    return telling(rows, base);
  }

  /**
   * The same for any rows.
   *
   * @param rows by check
   */
  static Map<String, String> telling(Map<String, double[]> rows, RuleBase base) {
    Map<String, String> telling = new LinkedHashMap<>();
    rows.forEach(
        (id, row) -> {
          Check check = base.checks().get(id);
          int most =
              IntStream.range(0, row.length)
                  .boxed()
                  .max(Comparator.comparingDouble(o -> row[o]))
                  .orElseThrow();
          if (check.kind() == Check.Kind.CHECK && !check.danger() && most > 0) {
            telling.put(id, outcome(check, most));
          }
        });
    return telling;
  }

  /** The causes that have most of the effects in common. */
  private String sharing() {
    return base.causes().values().stream()
        .filter(c -> shared(c) > 0)
        .sorted(Comparator.comparingDouble((Cause c) -> -shared(c)))
        .limit(MOST_SHARING)
        .map(Cause::id)
        .collect(Collectors.joining(", "));
  }

  private double shared(Cause cause) {
    return picked.entrySet().stream()
        .mapToDouble(e -> Math.min(e.getValue(), cause.leadsTo().getOrDefault(e.getKey(), 0.0)))
        .sum();
  }
}
