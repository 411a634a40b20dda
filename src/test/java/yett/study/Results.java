package yett.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Planning;

/** Results as tables in Markdown. */
final class Results {
  private final Planning planning;

  Results(Planning planning) {
    this.planning = planning;
  }

  Sample charged(List<Played> played) {
    return sample(played, p -> p.charged(planning.callBack(), planning.handOver()));
  }

  private Sample cost(List<Played> played) {
    return sample(
        played,
        p -> planning.minute() * p.charged(planning.callBack(), planning.handOver()) + p.parts());
  }

  private static Sample sample(List<Played> played, ToDoubleFunction<Played> of) {
    return new Sample(played.stream().mapToDouble(of).toArray());
  }

  private static double share(List<Played> played, Predicate<Played> so) {
    return 100.0 * played.stream().filter(so).count() / Math.max(1, played.size());
  }

  /** What each policy took. */
  String effort(Map<String, List<Played>> byPolicy) {
    StringBuilder table = new StringBuilder();
    table.append(
        "| policy | work, mean | work, 90 % | in all, mean | in all, 90 % | more than Yett (95 %) "
            + "| cost, mean | cost, 90 % | checks |\n|---|--:|--:|--:|--:|--:|--:|--:|--:|\n");
    Sample yett = charged(byPolicy.values().iterator().next());
    byPolicy.forEach(
        (name, played) -> {
          Sample work = sample(played, Played::minutes);
          Sample charged = charged(played);
          Sample cost = cost(played);
          Sample more = charged.minus(yett);
          table.append(
              words(
                  "| %s | %.0f | %.0f | %.0f | %.0f | %s | %.0f | %.0f | %.1f |%n",
                  name,
                  work.mean(),
                  work.ninetieth(),
                  charged.mean(),
                  charged.ninetieth(),
                  name.equals("Yett") ? "" : words("%+.0f ± %.0f", more.mean(), more.margin()),
                  cost.mean(),
                  cost.ninetieth(),
                  sample(played, Played::checks).mean()));
        });
    return table.toString();
  }

  /** How often each policy was right. */
  String success(Map<String, List<Played>> byPolicy) {
    StringBuilder table = new StringBuilder();
    table.append(
        "| policy | cured | back again | handed over | no repair tried | needless repairs "
            + "| needless parts a case | first repair right | first-ranked right | in first three |\n"
            + "|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|\n");
    byPolicy.forEach(
        (name, played) -> {
          double repairs = played.stream().mapToInt(Played::repairs).sum();
          double needless = played.stream().mapToInt(Played::needless).sum();
          List<Played> tried = played.stream().filter(p -> p.first().isPresent()).toList();
          table.append(
              words(
                  "| %s | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.0f | %.1f %% | %.1f %% |"
                      + " %.1f %% |%n",
                  name,
                  share(played, Played::cured),
                  share(played, Played::left),
                  share(played, Played::handedOver),
                  share(played, p -> p.first().isEmpty()),
                  100 * needless / Math.max(1, repairs),
                  sample(played, Played::needlessParts).mean(),
                  share(tried, p -> p.first().orElseThrow().repairRight()),
                  share(tried, p -> rank(p) == 1),
                  share(tried, p -> rank(p) <= 3)));
        });
    return table.toString();
  }

  /** Minutes in all, and the share cured, by how much was wrong. */
  String bySize(Map<String, List<Played>> byPolicy) {
    List<Played> yett = byPolicy.values().iterator().next();
    Predicate<Played> unknown = p -> p.truth().contains(Cause.NOT_IN_RULE_BASE);
    Predicate<Played> known = unknown.negate();
    Map<String, Predicate<Played>> sizes = new LinkedHashMap<>();
    sizes.put("one cause", known.and(p -> p.truth().size() == 1));
    sizes.put("two", known.and(p -> p.truth().size() == 2));
    sizes.put("three or more", known.and(p -> p.truth().size() > 2));
    sizes.put("one not in the rule base", unknown);
    sizes.put("Yett tried no repair", p -> p.first().isEmpty());
    StringBuilder table = new StringBuilder("| policy |");
    sizes.forEach(
        (name, in) -> table.append(words(" %s, %d |", name, yett.stream().filter(in).count())));
    table.append("\n|---|").append("--:|".repeat(sizes.size())).append("\n");
    byPolicy.forEach(
        (name, played) -> {
          table.append("| ").append(name).append(" |");
          for (Predicate<Played> in : sizes.values()) {
            List<Played> some =
                IntStream.range(0, played.size())
                    .filter(i -> in.test(yett.get(i)))
                    .mapToObj(played::get)
                    .toList();
            table.append(
                words(" %.0f (%.0f %%) |", charged(some).mean(), share(some, Played::cured)));
          }
          table.append("\n");
        });
    return table.toString();
  }

  /** Place of the best-ranked true cause when the first repair was proposed. */
  private static int rank(Played played) {
    List<String> ranked = played.first().orElseThrow().ranked();
    int rank = 0;
    while (!played.truth().contains(ranked.get(rank))) {
      rank++;
    }
    return rank + 1;
  }

  /** The chance of the leading cause at the first repair. */
  static List<Scores.Forecast> leading(List<Played> played) {
    List<Scores.Forecast> all = new ArrayList<>();
    for (Played p : played) {
      p.first()
          .ifPresent(
              b ->
                  all.add(
                      new Scores.Forecast(
                          b.chances().get(0), p.truth().contains(b.ranked().get(0)))));
    }
    return all;
  }

  /** The chances of all causes at the first repair, or at the end without one. */
  static List<Scores.Forecast> everyCause(List<Played> played) {
    List<Scores.Forecast> all = new ArrayList<>();
    for (Played p : played) {
      for (int i = 0; i < p.last().ranked().size(); i++) {
        all.add(
            new Scores.Forecast(
                p.last().chances().get(i), p.truth().contains(p.last().ranked().get(i))));
      }
    }
    return all;
  }

  static String reliability(Scores scores) {
    StringBuilder table = new StringBuilder();
    table.append("| forecast | cases | mean forecast | right | 95 % |\n|---|--:|--:|--:|--:|\n");
    for (Scores.Group g : scores.groups()) {
      double[] interval = Scores.wilson(g.hits(), g.count());
      table.append(
          words(
              "| %.0f–%.0f %% | %d | %.1f %% | %.1f %% | %.0f–%.0f %% |%n",
              100 * g.low(),
              100 * g.high(),
              g.count(),
              100 * g.forecast(),
              100 * g.right(),
              100 * interval[0],
              100 * interval[1]));
    }
    table.append(
        words(
            "%nBrier score %.4f = reliability %.4f − resolution %.4f + uncertainty %.4f%s; mean "
                + "distance from the diagonal %.1f points.%n",
            scores.brier(),
            scores.reliability(),
            scores.resolution(),
            scores.uncertainty(),
            words(" (%+.4f from the width of the groups)", scores.left()),
            100 * scores.calibrationError()));
    return table.toString();
  }

  /** What happens when the card of the true cause was never written. */
  static String leftOut(Map<String, List<Played>> byCause) {
    StringBuilder table = new StringBuilder();
    table.append(
        "| missing card | cases | *not in this rule base* first or second | wrong cause over 80 % "
            + "| handed over |\n|---|--:|--:|--:|--:|\n");
    List<Played> all = new ArrayList<>();
    byCause.forEach(
        (cause, played) -> {
          all.addAll(played);
          table.append(leftOut(cause, played));
        });
    table.append(leftOut("**all**", all));
    return table.toString();
  }

  private static String leftOut(String name, List<Played> played) {
    return words(
        "| %s | %d | %.0f %% | %.0f %% | %.0f %% |%n",
        name,
        played.size(),
        share(played, p -> p.last().ranked().indexOf(Cause.NOT_IN_RULE_BASE) < 2),
        share(
            played,
            p ->
                p.last().chances().get(0) > 0.8
                    && !p.last().ranked().get(0).equals(Cause.NOT_IN_RULE_BASE)
                    && !p.truth().contains(p.last().ranked().get(0))),
        share(played, Played::handedOver));
  }

  static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values).replace(System.lineSeparator(), "\n");
  }
}
