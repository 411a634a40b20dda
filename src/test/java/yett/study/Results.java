package yett.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import yett.knowledge.Planning;

/** What the policies took, and how often they were right. */
final class Results {
  private final Planning planning;

  Results(Planning planning) {
    this.planning = planning;
  }

  Sample inAll(List<Played> played) {
    return sample(played, p -> p.inAll(planning));
  }

  private static Sample sample(List<Played> played, ToDoubleFunction<Played> of) {
    return new Sample(played.stream().mapToDouble(of).toArray());
  }

  private static String share(List<Played> played, Predicate<Played> so) {
    return Text.share(played.stream().filter(so).count(), played.size());
  }

  private static String share(
      List<Played> played, ToIntFunction<Played> some, ToIntFunction<Played> all) {
    return Text.share(played.stream().mapToInt(some).sum(), played.stream().mapToInt(all).sum());
  }

  /** A column for each policy. */
  String table(Map<String, List<Played>> byPolicy) {
    List<Played> yett = byPolicy.values().iterator().next();
    List<String> head = new ArrayList<>(List.of(""));
    head.addAll(byPolicy.keySet());
    StringBuilder table = new StringBuilder(Text.head(head));
    Rows rows = new Rows(table, byPolicy);
    rows.add("minutes in all, mean", p -> Text.mean(inAll(p), 0));
    rows.add("minutes in all, 90 %", p -> Text.ninetieth(inAll(p)));
    rows.add("more than Yett, mean", p -> p == yett ? "" : more(inAll(p).minus(inAll(yett))));
    rows.add("minutes of work, mean", p -> Text.mean(sample(p, Played::minutes), 0));
    rows.add("minutes of work, 90 %", p -> Text.ninetieth(sample(p, Played::minutes)));
    rows.add("cost to cure, mean", p -> Text.mean(sample(p, q -> q.cost(planning)), 0));
    rows.add("cost to cure, 90 %", p -> Text.ninetieth(sample(p, q -> q.cost(planning))));
    rows.add("checks, mean", p -> Text.mean(sample(p, Played::checks), 1));
    rows.add("wrong among parts fitted", p -> share(p, Played::needlessFitted, Played::fitted));
    rows.add("wrong parts, price a case", p -> Text.mean(sample(p, Played::needlessParts), 0));
    rows.add("needless among repairs", p -> share(p, Played::needless, Played::repairs));
    rows.add("first-ranked right", p -> share(p, q -> q.rank() == 1));
    rows.add("right in first three", p -> share(p, q -> q.rank() <= 3));
    rows.add("first repair right", p -> share(tried(p), q -> q.first().get().repairRight()));
    rows.add("cured", p -> share(p, Played::cured));
    rows.add("closed with a fault left", p -> share(p, Played::left));
    rows.add("handed over", p -> share(p, Played::handedOver));
    return table.toString();
  }

  private static List<Played> tried(List<Played> played) {
    return played.stream().filter(p -> p.first().isPresent()).toList();
  }

  private static String more(Sample more) {
    return Text.words("%+.0f ± %.0f", more.mean(), more.margin());
  }

  private record Rows(StringBuilder table, Map<String, List<Played>> byPolicy) {
    void add(String name, Function<List<Played>, String> of) {
      List<String> cells = new ArrayList<>(List.of(name));
      byPolicy.values().forEach(played -> cells.add(of.apply(played)));
      table.append(Text.row(cells));
    }
  }

  /** In words, from which policies Yett can be told by its minutes in all. */
  String standsOut(String kind, Map<String, List<Played>> byPolicy) {
    Sample yett = inAll(byPolicy.values().iterator().next());
    List<String> slower = new ArrayList<>();
    List<String> quicker = new ArrayList<>();
    List<String> alike = new ArrayList<>();
    byPolicy.forEach(
        (name, played) -> {
          Sample more = inAll(played).minus(yett);
          boolean told = Math.abs(more.mean()) > more.margin();
          List<String> where = !told ? alike : more.mean() > 0 ? slower : quicker;
          where.add(Text.words("%s (%s)", name, more(more)));
        });
    alike.remove(0); // Yett itself
    String words =
        Text.words("- *%s*: Yett takes %s minutes in all.", upper(kind), Text.mean(yett, 0));
    words += slower.isEmpty() ? "" : " Slower than Yett: " + String.join(", ", slower) + ".";
    words += quicker.isEmpty() ? "" : " Quicker: " + String.join(", ", quicker) + ".";
    return words
        + (alike.isEmpty() ? "" : " Not to be told apart: " + String.join(", ", alike) + ".");
  }

  private static String upper(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
