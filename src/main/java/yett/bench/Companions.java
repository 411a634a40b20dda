package yett.bench;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.RuleBase;

/**
 * Finds checks that usually show something whenever what was said of a new cause is seen, judged by
 * the known causes. Nobody thinks of all of them without being asked.
 */
final class Companions {
  /** More questions are tiring; considered judgement. */
  private static final int MOST = 4;

  /**
   * At least this many causes have to show both before the other is asked for; considered
   * judgement.
   */
  private static final int FEWEST = 3;

  /** Least share of the causes showing the one that also show the other; considered judgement. */
  private static final double MOSTLY = 0.5;

  /** The share has to be this many times that among all causes; considered judgement. */
  private static final double MORE_THAN_ELSE = 2;

  /**
   * An outcome is a sign if it is seen this many times as often as on a sound gate, and at least
   * with the chance {@code SEEN}.
   */
  private static final double TELLS = 2;

  private static final double SEEN = 0.2;

  private final RuleBase base;
  private final Map<String, Set<String>> showing = new HashMap<>();

  Companions(RuleBase base) {
    this.base = base;
    base.ordinaryChecks().forEach(c -> showing.put(c.id(), showing(c, -1)));
  }

  /**
   * A companion check.
   *
   * @param effect by which most causes show it; empty if it is usually their own mark
   */
  record Companion(Check check, Optional<Effect> effect) {
    private String reason() {
      return effect.map(Effect::id).orElse(check.id());
    }
  }

  /**
   * @param both causes that show what was said and show this too
   * @param share of the causes that show what was said
   */
  private record Found(Check check, List<String> both, double share) {}

  /**
   * The companions of what was said, the closest first. Of several that come from the same effect
   * only one is returned, because a person who confirms it wants the effect, not a row for every
   * look.
   *
   * @param told answers by check or complaint
   * @param known checks that need not be asked for
   * @param kin causes that are like the new one; what goes together with quite other causes says
   *     nothing about it. Empty if nothing is known of its kind
   */
  List<Companion> of(Map<String, String> told, Set<String> known, Set<String> kin) {
    Map<String, Found> found = new HashMap<>();
    told.forEach(
        (id, answer) -> {
          Check check = base.checks().get(id);
          for (String outcome : RowAnswer.parts(answer).keySet()) {
            int at = Lists.ids(Vocabulary.outcomes(check)).indexOf(outcome);
            Set<String> causes = at < 0 ? Set.of() : showing(check, at);
            if (causes.size() >= FEWEST) {
              showing.forEach(
                  (other, all) -> {
                    if (ofItsKind(causes, all, kin)) {
                      weigh(other, all, causes, found);
                    }
                  });
            }
          }
        });
    Set<String> reasons = new HashSet<>();
    return found.values().stream()
        .filter(f -> !known.contains(f.check().id()) && !told.containsKey(f.check().id()))
        .sorted(
            Comparator.comparingDouble((Found f) -> -f.share()).thenComparing(f -> f.check().id()))
        .map(f -> new Companion(f.check(), effect(f)))
        .filter(c -> reasons.add(c.reason()))
        .limit(MOST)
        .toList();
  }

  /**
   * Whether several causes of its kind that show the one show the other too, and most of them do.
   */
  private static boolean ofItsKind(Set<String> causes, Set<String> all, Set<String> kin) {
    List<String> alike = causes.stream().filter(kin::contains).toList();
    long both = alike.stream().filter(all::contains).count();
    return kin.isEmpty() || both > 1 && both >= MOSTLY * alike.size();
  }

  private void weigh(String other, Set<String> all, Set<String> causes, Map<String, Found> found) {
    List<String> both = causes.stream().filter(all::contains).toList();
    double share = (double) both.size() / causes.size();
    double usual = (double) all.size() / base.causes().size();
    if (both.size() >= FEWEST && share >= MOSTLY && share >= MORE_THAN_ELSE * usual) {
      found.merge(
          other,
          new Found(base.checks().get(other), both, share),
          BinaryOperator.maxBy(Comparator.comparingDouble(Found::share)));
    }
  }

  private Optional<Effect> effect(Found found) {
    Map<Effect, Long> counts =
        found.both().stream()
            .flatMap(id -> base.effectRows().behind(base.causes().get(id), found.check()).stream())
            .collect(Collectors.groupingBy(e -> e, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .filter(e -> 2 * e.getValue() > found.both().size())
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey);
  }

  /**
   * Causes of which an outcome is a sign.
   *
   * @param outcome its position, or -1 for any
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
