package yett.belief;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The probability of each cause's effects after the observations so far, and the rows that follow
 * for the next look. Two looks at one effect are not independent: after an ordinary first look the
 * effect is probably absent, so a second ordinary look says little more against the cause.
 * Immutable.
 *
 * <p>Kept for each cause as if it were present alone. After an ordinary answer this is exact even
 * with other causes, because their rows multiply; after another answer it ignores that another
 * cause may have produced it. The effects of one cause are treated as independent after every look.
 * {@code EffectRowsTest} measures the error.
 */
final class EffectsSeen {
  private final CausalModel model;

  /** By position of a cause; where nothing was observed, the model's own array. */
  private final double[][] chances;

  private final Map<String, CheckTable> tables = new ConcurrentHashMap<>();

  private EffectsSeen(CausalModel model, double[][] chances) {
    this.model = model;
    this.chances = chances;
  }

  /** The state before any observation. */
  static EffectsSeen none(CausalModel model) {
    return new EffectsSeen(model, model.effects().chances());
  }

  EffectsSeen after(Observation observation) {
    double[][] next = null;
    double[] base = null;
    for (EffectShowing showing : model.effects().showings(observation.check())) {
      if (next == null) {
        next = chances.clone();
        base = model.table(observation.check()).cumulativeBase();
      }
      int cause = showing.cause();
      next[cause] = showing.after(chances[cause], base, observation.weights());
    }
    return next == null ? this : new EffectsSeen(model, next);
  }

  /** The table of a check as the causes now show on it. */
  CheckTable table(String check) {
    return model.effects().showings(check).isEmpty()
        ? model.table(check)
        : tables.computeIfAbsent(check, this::changed);
  }

  private CheckTable changed(String check) {
    CheckTable table = model.table(check);
    double[][] outset = model.effects().chances();
    Map<Integer, double[]> rows = new LinkedHashMap<>();
    for (EffectShowing showing : model.effects().showings(check)) {
      int cause = showing.cause();
      if (chances[cause] != outset[cause]) {
        rows.put(cause, showing.row(chances[cause], table.outcomes()));
      }
    }
    return rows.isEmpty() ? table : table.with(rows);
  }
}
