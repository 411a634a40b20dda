package yett.belief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * What a fault that no card describes looks like. It lies in some area, and on checks looks like
 * one of that area's causes, nobody knows which, and less sharply: so it is one kind of cause for
 * each area, and one that may lie anywhere. On checks that have nothing to do with its area it
 * shows as little as any other cause, so that ordinary answers elsewhere do not speak against it.
 */
final class Unknown {
  /** Share of what is unknown that lies in no one area. */
  static final double ANYWHERE = 0.2;

  /** How often it shows on a check of its area in a way of its own, evenly over all outcomes. */
  static final double OWN_WAY = 0.25;

  /** The same of complaints. */
  static final double SAID = 0.1;

  /** How often on a check that is about something else. */
  static final double ELSEWHERE = 0.02;

  private final Map<String, List<Cause>> byArea = new LinkedHashMap<>();
  private final List<Cause> all = new ArrayList<>();
  private final boolean there;

  Unknown(RuleBase base) {
    there = base.causes().containsKey(Cause.NOT_IN_RULE_BASE);
    for (Cause cause : base.causes().values()) {
      if (!cause.id().equals(Cause.NOT_IN_RULE_BASE) && !cause.id().equals(Cause.NOTHING_WRONG)) {
        all.add(cause);
        byArea.computeIfAbsent(cause.area(), a -> new ArrayList<>()).add(cause);
      }
    }
    if (!there || byArea.size() < 2) {
      byArea.clear();
    }
  }

  /** Areas in which something unknown may lie; none if the rule base is all one area. */
  List<String> areas() {
    return List.copyOf(byArea.keySet());
  }

  static String kind(String area) {
    return Cause.NOT_IN_RULE_BASE + " in " + area;
  }

  /** Share of its own prior that a cause keeps, what its kinds have left aside. */
  double share(String cause) {
    return cause.equals(Cause.NOT_IN_RULE_BASE) && !byArea.isEmpty() ? ANYWHERE : 1;
  }

  /** Share of the unknown that lies in an area: as much as it has of the known causes. */
  double shareOf(String area) {
    return (1 - ANYWHERE) * byArea.get(area).size() / all.size();
  }

  /** What each kind shows on a check, by its name in the model. */
  Map<String, double[]> rows(Check check) {
    Map<String, double[]> rows = new LinkedHashMap<>();
    if (!there) {
      return rows;
    }
    double[] said = check.likelihood().get(Cause.NOT_IN_RULE_BASE);
    rows.put(Cause.NOT_IN_RULE_BASE, said != null ? said : like(all, check));
    byArea.forEach(
        (area, causes) -> {
          boolean shows = causes.stream().anyMatch(c -> check.likelihood().containsKey(c.id()));
          boolean about = shows || area.equals(check.area());
          rows.put(kind(area), about ? like(causes, check) : said != null ? said : faint(check));
        });
    return rows;
  }

  /** The mean of what some causes show, blurred. */
  private static double[] like(List<Cause> causes, Check check) {
    int n = check.outcomes().size();
    double[] mean = new double[n];
    for (Cause cause : causes) {
      double[] row = check.likelihood().get(cause.id());
      for (int i = 0; i < n; i++) {
        mean[i] += (row == null ? i == 0 ? 1 : 0 : row[i]) / Math.max(1, causes.size());
      }
    }
    return blurred(mean, check.kind() == Check.Kind.COMPLAINT ? SAID : OWN_WAY);
  }

  private static double[] faint(Check check) {
    double[] row = new double[check.outcomes().size()];
    row[0] = 1;
    return blurred(row, ELSEWHERE);
  }

  private static double[] blurred(double[] row, double share) {
    double[] blurred = new double[row.length];
    for (int i = 0; i < row.length; i++) {
      blurred[i] = (1 - share) * row[i] + share / row.length;
    }
    return blurred;
  }
}
