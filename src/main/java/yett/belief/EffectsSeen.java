package yett.belief;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How probable the effects of each cause are after what was seen, and what the cause therefore
 * shows next. Two looks at one effect are one piece of news: once the first was ordinary, the
 * effect is hardly there, and a second ordinary one says little more against the cause. Immutable.
 *
 * <p>Kept by cause, as if it were there alone. Of an ordinary answer that is exact beside any other
 * causes, because their rows are multiplied; of a telling one it leaves out that another cause may
 * have made it. The effects of one cause are taken as independent of each other after every look.
 * What it amounts to is measured in {@code EffectRowsTest}.
 */
final class EffectsSeen {
  private final CausalModel model;

  /** By position of a cause; those at which nothing was seen are the arrays of the model. */
  private final double[][] chances;

  private final Map<String, CheckTable> tables = new ConcurrentHashMap<>();

  private EffectsSeen(CausalModel model, double[][] chances) {
    this.model = model;
    this.chances = chances;
  }

  /** Before anything is seen. */
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

  /** How the causes show on a check now. */
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
