package yett.belief;

import java.util.Arrays;
import java.util.List;

/**
 * The answers to a check and its repetitions, and how their joint chance under a set of causes
 * depends on the numbers of the rows. The chance is linear in each single row, so for each check it
 * is a sum over outcomes of the chance times a weight that does not depend on its own row.
 */
record SharedAnswers(CausalModel model, String original, List<Observation> observations) {
  /** Receives the derivative of the log of the chance by one number of a row. */
  interface Slopes {
    void take(String check, String cause, int outcome, double slope);
  }

  /** Those causes of a set that have a row on one of the checks. */
  int[] showing(int[] set) {
    int count = 0;
    int[] showing = new int[set.length];
    for (int cause : set) {
      if (shows(cause)) {
        showing[count++] = cause;
      }
    }
    return count == set.length ? set : Arrays.copyOf(showing, count);
  }

  private boolean shows(int cause) {
    if (model.table(original).cumulative(cause) != null) {
      return true;
    }
    for (Observation observation : observations) {
      if (model.table(observation.check()).cumulative(cause) != null) {
        return true;
      }
    }
    return false;
  }

  void derivatives(int[] set, Slopes slopes) {
    CheckTable table = model.table(original);
    double[] chances = table.outcomeChances(set);
    double[] alone = observations.stream().mapToDouble(o -> mix(o, set)).toArray();
    double[] weights = new double[chances.length];
    for (int a = 0; a < weights.length; a++) {
      weights[a] = 1;
      for (int i = 0; i < alone.length; i++) {
        weights[a] *= chance(i, a, alone);
      }
    }
    double together = 0;
    for (int a = 0; a < weights.length; a++) {
      together += weights[a] * chances[a];
    }
    rows(original, set, weights, together, slopes);
    for (int i = 0; i < alone.length; i++) {
      if (!observations.get(i).check().equals(original)) {
        repetition(i, set, chances, alone, together, slopes);
      }
    }
  }

  private double mix(Observation observation, int[] set) {
    double[] chances = model.table(observation.check()).outcomeChances(set);
    double sum = 0;
    for (int y = 0; y < chances.length; y++) {
      sum += observation.weights().get(y) * chances[y];
    }
    return sum;
  }

  /** Chance of one answer given an outcome of the original. */
  private double chance(int answer, int outcome, double[] alone) {
    Observation observation = observations.get(answer);
    Repetition repetition = model.repetition(observation.check());
    if (repetition == null) {
      return observation.weights().get(outcome);
    }
    int own = repetition.outcomes()[outcome];
    double copied = own < 0 ? 0 : repetition.share() * observation.weights().get(own);
    return copied + own(repetition, outcome) * alone[answer];
  }

  /** Share of a repetition that does not copy this outcome of the original. */
  private static double own(Repetition repetition, int outcome) {
    return repetition.outcomes()[outcome] < 0 ? 1 : 1 - repetition.share();
  }

  private void repetition(
      int answer, int[] set, double[] chances, double[] alone, double together, Slopes slopes) {
    Observation observation = observations.get(answer);
    Repetition repetition = model.repetition(observation.check());
    double factor = 0;
    for (int a = 0; a < chances.length; a++) {
      double others = chances[a] * own(repetition, a);
      for (int i = 0; i < alone.length; i++) {
        others *= i == answer ? 1 : chance(i, a, alone);
      }
      factor += others;
    }
    double scale = factor;
    double[] weights = observation.weights().stream().mapToDouble(w -> w * scale).toArray();
    rows(observation.check(), set, weights, together, slopes);
  }

  /**
   * Derivatives for the rows that make up a check under a set: the base row and those of the
   * causes.
   */
  private void rows(String check, int[] set, double[] weights, double together, Slopes slopes) {
    CheckTable table = model.table(check);
    double[] base = table.cumulativeBase();
    row(check, "", base, others(table, set, -1), weights, together, slopes);
    for (int cause : set) {
      // The row of a kind of a cause follows from other rows; it is on no card.
      double[] row = model.told(cause) == cause ? table.cumulative(cause) : null;
      if (row != null) {
        double[] others = others(table, set, cause);
        for (int y = 0; y < others.length; y++) {
          others[y] *= base[y];
        }
        row(check, model.causes().get(cause), row, others, weights, together, slopes);
      }
    }
  }

  /** Product of the cumulative rows of all causes of a set except one. */
  private static double[] others(CheckTable table, int[] set, int but) {
    double[] product = new double[table.outcomes()];
    Arrays.fill(product, 1);
    for (int cause : set) {
      double[] row = cause == but ? null : table.cumulative(cause);
      for (int y = 0; row != null && y < product.length; y++) {
        product[y] *= row[y];
      }
    }
    return product;
  }

  /**
   * Derivatives for each number of a row, changed on the scale of log-odds with the others scaled
   * to fit.
   */
  private static void row(
      String check,
      String cause,
      double[] row,
      double[] others,
      double[] weights,
      double together,
      Slopes slopes) {
    for (int moved = 0; moved < row.length; moved++) {
      double chance = row[moved] - (moved == 0 ? 0 : row[moved - 1]);
      double slope = 0;
      double below = 0;
      for (int y = 0; y < row.length; y++) {
        double cumulative = chance * ((y >= moved ? 1 : 0) - row[y]) * others[y];
        slope += weights[y] * (cumulative - below);
        below = cumulative;
      }
      slopes.take(check, cause, moved, slope / together);
    }
  }
}
