package yett.bench;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Checks that mostly show something wherever what was told of a new cause is seen: causes that are
 * known already tell which looks go together. Nobody thinks of all of them unasked.
 */
final class Companions {
  /** More questions tire; considered judgement. */
  private static final int MOST = 4;

  /** So many causes have to show both before one is asked for the other; considered judgement. */
  private static final int FEWEST = 3;

  /** Share of the causes that show the one and show the other too; considered judgement. */
  private static final double MOSTLY = 0.5;

  /** How much oftener than with any cause; considered judgement. */
  private static final double MORE_THAN_ELSE = 2;

  /** An outcome tells if it is seen twice as often as on a sound gate, and one time in five. */
  private static final double TELLS = 2;

  private static final double SEEN = 0.2;

  private final RuleBase base;
  private final Map<String, Set<String>> showing = new HashMap<>();

  Companions(RuleBase base) {
    this.base = base;
    base.ordinaryChecks().forEach(c -> showing.put(c.id(), showing(c, -1)));
  }

  /**
   * Those of what was told, what goes together most first.
   *
   * @param told answers by check or complaint
   * @param known checks that need not be asked for
   */
  List<Check> of(Map<String, String> told, Set<String> known) {
    Map<String, Double> shares = new HashMap<>();
    told.forEach(
        (id, answer) -> {
          Check check = base.checks().get(id);
          for (String outcome : RowAnswer.parts(answer).keySet()) {
            int at = Lists.ids(Vocabulary.outcomes(check)).indexOf(outcome);
            Set<String> causes = at < 0 ? Set.of() : showing(check, at);
            if (causes.size() >= FEWEST) {
              showing.forEach((other, all) -> weigh(other, all, causes, shares));
            }
          }
        });
    return shares.entrySet().stream()
        .filter(e -> !known.contains(e.getKey()) && !told.containsKey(e.getKey()))
        .sorted(
            Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue())
                .thenComparing(Map.Entry::getKey))
        .limit(MOST)
        .map(e -> base.checks().get(e.getKey()))
        .toList();
  }

  private void weigh(
      String other, Set<String> all, Set<String> causes, Map<String, Double> shares) {
    long both = causes.stream().filter(all::contains).count();
    double share = (double) both / causes.size();
    double usual = (double) all.size() / base.causes().size();
    if (both >= FEWEST && share >= MOSTLY && share >= MORE_THAN_ELSE * usual) {
      shares.merge(other, share, Math::max);
    }
  }

  /**
   * Causes with which an outcome tells.
   *
   * @param outcome its place, or -1 for any
   */
  private static Set<String> showing(Check check, int outcome) {
    return check.likelihood().entrySet().stream()
        .filter(e -> tells(e.getValue(), check.otherwise(), outcome))
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static boolean tells(double[] row, double[] sound, int outcome) {
    for (int o = 0; o < row.length; o++) {
      if ((outcome < 0 || outcome == o) && row[o] >= SEEN && row[o] >= TELLS * sound[o]) {
        return true;
      }
    }
    return false;
  }
}
