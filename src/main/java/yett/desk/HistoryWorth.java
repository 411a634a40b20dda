package yett.desk;

import java.util.Comparator;
import java.util.List;
import yett.belief.Belief;
import yett.knowledge.History;

/** Which of many things would tell most, as far as it can be known before they are asked. */
public final class HistoryWorth {
  private HistoryWorth() {}

  /**
   * Those that would move what is believed now most: the chance of each cause times the change of
   * its log-odds, added up. In the order of the cards where two would tell as much.
   */
  public static List<History> most(List<History> histories, Belief belief, int many) {
    List<String> causes = belief.model().causes();
    double[] now = belief.remaining();
    return histories.stream()
        .sorted(Comparator.comparingDouble((History h) -> -moves(h, causes, now)))
        .limit(many)
        .toList();
  }

  private static double moves(History history, List<String> causes, double[] now) {
    return history.odds().entrySet().stream()
        .filter(e -> causes.contains(e.getKey()))
        .mapToDouble(e -> now[causes.indexOf(e.getKey())] * Math.abs(Math.log(e.getValue())))
        .sum();
  }
}
