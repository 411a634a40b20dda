package yett.desk;

import java.util.Comparator;
import java.util.List;
import yett.belief.Belief;
import yett.knowledge.History;

/** Estimates which recent events are most worth asking about. */
public final class HistoryWorth {
  private HistoryWorth() {}

  /**
   * The events that would change the present belief most: the sum over all causes of the chance of
   * the cause times the change of its log-odds. Equal ones stay in the order of the cards.
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
