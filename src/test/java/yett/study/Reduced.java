package yett.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.testing.Repairs;

/** A rule base as it would be if somebody had never written the card of a cause. */
final class Reduced {
  private Reduced() {}

  /** Without the cause, its rows in all checks, links to it, and repairs of nothing else. */
  static RuleBase without(RuleBase base, String cause) {
    Map<String, Cause> causes = each(base.causes(), c -> without(c, cause, c.prior()));
    causes.remove(cause);
    Map<String, Repair> repairs =
        each(base.repairs(), r -> r.withRemoves(less(r.removes(), cause)));
    repairs.values().removeIf(r -> r.removes().isEmpty());
    List<String> gone =
        base.repairs().keySet().stream().filter(r -> !repairs.containsKey(r)).toList();
    return base.withCards(
            causes,
            each(base.checks(), c -> without(c, cause)),
            each(
                base.histories(),
                h ->
                    new History(
                        h.id(), h.name(), h.lay(), less(h.odds(), cause), h.onlyIf(), h.source())),
            each(repairs, r -> entailing(r, gone)))
        .ruledBy(base.rules(), tables(base, cause), base.addOns())
        .named(base.fingerprint() + " without " + cause);
  }

  /** Rows of odds no longer speak of it; one that spoke of nothing else is gone. */
  private static SortedMap<String, String> tables(RuleBase base, String cause) {
    String factor = "(?<![\\w-])" + Pattern.quote(cause) + " [\\d.]+";
    SortedMap<String, String> tables = new TreeMap<>(base.tables());
    tables.replaceAll(
        (file, text) ->
            text.lines()
                .filter(row -> !row.matches(".*," + factor + ",.*"))
                .map(row -> row.replaceAll(factor + ", *|, *" + factor + "(?=\")", ""))
                .collect(Collectors.joining("\n", "", "\n")));
    return tables;
  }

  /**
   * With a cause as rare as what is unknown and looks like it: of the unknown four fifths look like
   * some cause, in the proportion of their priors.
   */
  static RuleBase asRareAsUnknown(RuleBase base, String cause) {
    double all =
        base.causes().values().stream()
            .filter(c -> !c.id().equals(Cause.NOT_IN_RULE_BASE))
            .filter(c -> !c.id().equals(Cause.NOTHING_WRONG))
            .mapToDouble(Cause::prior)
            .sum();
    double share = 0.8 * base.causes().get(Cause.NOT_IN_RULE_BASE).prior() / all;
    Map<String, Cause> causes = new LinkedHashMap<>(base.causes());
    causes.computeIfPresent(cause, (id, c) -> without(c, "", share * c.prior()));
    return base.withCards(causes, base.checks(), base.histories(), base.repairs())
        .named(base.fingerprint() + " with rare " + cause);
  }

  private static <C> Map<String, C> each(Map<String, C> cards, UnaryOperator<C> change) {
    Map<String, C> changed = new LinkedHashMap<>();
    cards.forEach((id, card) -> changed.put(id, change.apply(card)));
    return changed;
  }

  private static <V> Map<String, V> less(Map<String, V> byCause, String cause) {
    Map<String, V> rest = new LinkedHashMap<>(byCause);
    rest.remove(cause);
    return rest;
  }

  private static Cause without(Cause c, String cause, double prior) {
    return new Cause(
        c.id(),
        c.name(),
        c.area(),
        prior,
        less(c.consequences(), cause),
        c.leadsTo(),
        c.retestFails(),
        c.onlyIf(),
        c.arises(),
        c.prevent(),
        c.source());
  }

  private static Check without(Check c, String cause) {
    return c.withLikelihood(less(c.likelihood(), cause));
  }

  private static Repair entailing(Repair r, List<String> gone) {
    List<String> entails = r.entails().stream().filter(e -> !gone.contains(e)).toList();
    return Repairs.like(r, r.id(), entails, r.onlyIf());
  }
}
