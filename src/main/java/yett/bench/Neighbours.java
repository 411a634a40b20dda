package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * The causes from which a new one must be told, and the checks on which they show. A new cause's
 * rows are set next to theirs.
 */
final class Neighbours {
  private static final int MOST_CHECKS = 8;

  private final RuleBase base;
  private final List<String> causes;

  Neighbours(RuleBase base, List<String> causes) {
    this.base = base;
    this.causes = causes.stream().filter(base.causes()::containsKey).toList();
  }

  /** Checks on which the neighbours show most, the most telling first. */
  List<Check> checks() {
    return ranked(Check.Kind.CHECK).stream().limit(MOST_CHECKS).toList();
  }

  /** Complaints that the neighbours lead to, the most likely first. */
  List<Check> complaints() {
    return ranked(Check.Kind.COMPLAINT);
  }

  /** The named neighbours that the rule base knows. */
  List<String> causes() {
    return causes;
  }

  /** How often people report it with each neighbour and with a sound gate. */
  String said(Check complaint) {
    List<String> parts = new ArrayList<>();
    for (String cause : causes) {
      double[] row = complaint.likelihood().get(cause);
      if (row != null) {
        parts.add(String.format(Locale.ROOT, "%s %.2f", cause, row[1]));
      }
    }
    parts.add(String.format(Locale.ROOT, "a sound gate %.2f", complaint.otherwise()[1]));
    return String.join(", ", parts);
  }

  private List<Check> ranked(Check.Kind kind) {
    return base.checks().values().stream()
        .filter(c -> c.kind() == kind && !c.danger() && shows(c) > 0)
        .sorted(Comparator.comparingDouble(this::shows).reversed().thenComparing(Check::id))
        .toList();
  }

  /** The largest distance of a neighbour's row from that of a sound gate (total variation). */
  private double shows(Check check) {
    return causes.stream()
        .filter(check.likelihood()::containsKey)
        .mapToDouble(c -> distance(check.likelihood().get(c), check.otherwise()))
        .max()
        .orElse(0);
  }

  static double distance(double[] one, double[] other) {
    return IntStream.range(0, one.length).mapToDouble(i -> Math.abs(one[i] - other[i])).sum() / 2;
  }

  /**
   * The outcomes of a check, with the rows of the neighbours and of a sound gate, one line each.
   */
  List<String> rows(Check check) {
    List<String> lines = new ArrayList<>();
    for (String cause : causes) {
      double[] row = check.likelihood().get(cause);
      lines.add(cause + ": " + (row == null ? "as on a sound gate" : shown(check, row)));
    }
    lines.add("a sound gate: " + shown(check, check.otherwise()));
    return lines;
  }

  static String shown(Check check, double[] row) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < row.length; i++) {
      parts.add(String.format(Locale.ROOT, "%s %.2f", check.outcomes().get(i).id(), row[i]));
    }
    return String.join(", ", parts);
  }
}
