package yett.belief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.EffectRows;
import yett.knowledge.RuleBase;

/** Finds which rows of the cards follow from effects, and tells a model of them. */
final class CardEffects {
  /**
   * A row that follows from effects.
   *
   * @param unknown whether the cause's unknown double has a row here as well
   * @param rows by effect, the row when it alone is present
   */
  private record Row(String check, String cause, boolean unknown, Map<String, double[]> rows) {}

  private final Map<String, Map<String, Double>> chances = new LinkedHashMap<>();
  private final List<Row> rows = new ArrayList<>();

  private CardEffects() {}

  static CardEffects of(RuleBase base) {
    CardEffects all = new CardEffects();
    EffectRows effects = base.effectRows();
    for (Cause cause : base.causes().values()) {
      if (!cause.leadsTo().isEmpty()) {
        Map<String, Double> each = new LinkedHashMap<>();
        effects.chances(cause).forEach((effect, chance) -> each.put(effect.id(), chance));
        all.chances.put(cause.id(), each);
        base.checks().values().forEach(check -> all.add(cause, check, effects));
      }
    }
    return all;
  }

  private void add(Cause cause, Check check, EffectRows effects) {
    List<Effect> behind = effects.behind(cause, check);
    if (!behind.isEmpty()) {
      Map<String, double[]> each = new LinkedHashMap<>();
      behind.forEach(effect -> each.put(effect.id(), effect.shows().get(check.id())));
      boolean unknown = !check.danger() && check.kind() != Check.Kind.PROOF;
      rows.add(new Row(check.id(), cause.id(), unknown, each));
    }
  }

  /**
   * Adds these rows to a model.
   *
   * @param doubled causes that have an unknown double in the model
   * @param evenly share of every row of a cause that is spread evenly over the outcomes
   */
  void into(CausalModel.Builder builder, Set<String> doubled, double evenly) {
    chances.forEach(
        (cause, each) -> {
          builder.effects(cause, each);
          if (doubled.contains(cause)) {
            builder.effects(Unknown.like(cause), each);
          }
        });
    for (Row row : rows) {
      builder.byEffects(row.check(), row.cause(), row.rows(), evenly);
      if (row.unknown() && doubled.contains(row.cause())) {
        builder.byEffects(
            row.check(), Unknown.like(row.cause()), row.rows(), Unknown.evenly(evenly));
      }
    }
  }
}
