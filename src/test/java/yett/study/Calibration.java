package yett.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import yett.study.Scores.Forecast;

/** How far Yett's percentages can be taken at their word. */
final class Calibration {
  private static final int DECILES = 10;

  /** The group that a diagnosis given with 80 % to 90 % falls into. */
  private static final double WATCHED = 0.8;

  private Calibration() {}

  /** The chance of the leading cause at the first repair. */
  static Scores leading(List<Played> played) {
    return Scores.of(
        played.stream()
            .flatMap(
                p ->
                    p.first().stream()
                        .map(b -> new Forecast(b.chances().get(0), isTrue(p, b.ranked().get(0)))))
            .toList(),
        DECILES);
  }

  /** The chances of all causes at the first repair, or at the end without one. */
  private static Scores everyCause(List<Played> played) {
    List<Forecast> all = new ArrayList<>();
    for (Played p : played) {
      for (int i = 0; i < p.last().ranked().size(); i++) {
        all.add(new Forecast(p.last().chances().get(i), isTrue(p, p.last().ranked().get(i))));
      }
    }
    return Scores.of(all, DECILES);
  }

  private static boolean isTrue(Played played, String cause) {
    return played.truth().contains(cause);
  }

  /** By tenths of the forecast, how often the leading cause was right. */
  static String reliability(Map<String, Scores> kinds) {
    List<String> head = new ArrayList<>(List.of("leading cause given with"));
    TreeSet<Double> lows = new TreeSet<>();
    kinds.forEach(
        (kind, scores) -> {
          head.add(kind + ": diagnoses");
          head.add("mean");
          head.add("right (95 %)");
          scores.groups().forEach(g -> lows.add(g.low()));
        });
    StringBuilder table = new StringBuilder(Text.head(head));
    for (double low : lows) {
      List<String> cells =
          new ArrayList<>(List.of(Text.words("%.0f–%.0f %%", 100 * low, 100 * low + DECILES)));
      for (Scores scores : kinds.values()) {
        Optional<Scores.Group> group = group(scores, low);
        cells.add(group.map(g -> String.valueOf(g.count())).orElse("0"));
        cells.add(group.map(g -> Text.words("%.1f %%", 100 * g.forecast())).orElse(""));
        cells.add(group.map(g -> Text.share(g.hits(), g.count())).orElse(""));
      }
      table.append(Text.row(cells));
    }
    return table.toString();
  }

  private static Optional<Scores.Group> group(Scores scores, double low) {
    return scores.groups().stream().filter(g -> g.low() == low).findAny();
  }

  /** Brier score and its parts. */
  static String brier(Map<String, List<Played>> yett) {
    StringBuilder table =
        new StringBuilder(
            Text.head(
                List.of(
                    "forecasts",
                    "number",
                    "Brier score",
                    "= reliability",
                    "− resolution",
                    "+ uncertainty",
                    "+ width of groups",
                    "from the diagonal")));
    yett.forEach(
        (kind, played) -> {
          table.append(brier(kind + ", leading cause", leading(played)));
          table.append(brier(kind + ", every cause", everyCause(played)));
        });
    return table.toString();
  }

  private static String brier(String name, Scores s) {
    return Text.words(
        "| %s | %,d | %.4f | %.4f | %.4f | %.4f | %+.4f | %.1f points |%n",
        name,
        s.count(),
        s.brier(),
        s.reliability(),
        s.resolution(),
        s.uncertainty(),
        s.left(),
        100 * s.calibrationError());
  }

  /** In words, how often diagnoses given with 80 % to 90 % were right. */
  static String standsOut(Map<String, Scores> kinds) {
    List<String> said = new ArrayList<>();
    kinds.forEach(
        (kind, scores) ->
            said.add(
                group(scores, WATCHED)
                    .map(
                        g ->
                            Text.words(
                                "%s %s of %,d", kind, Text.share(g.hits(), g.count()), g.count()))
                    .orElse(kind + " none was given")));
    return "- Diagnoses given with 80 % to 90 % were right: " + String.join("; ", said) + ".";
  }
}
