package yett.belief;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.knowledge.RuleBase;

/**
 * Keeps a causal model of a rule base for each kind of gate. A cause that cannot be present there
 * is left out as if it had no card, so that cards about other gates do not change the chances of
 * other causes and of the unknown.
 */
public final class GateModels {
  /** Number of models kept. Few kinds of gates make up most cases, and a model is slow to build. */
  private static final int KEPT = 16;

  private final CausalModel whole;
  private final Function<Set<String>, CausalModel> without;

  private GateModels(CausalModel whole, Function<Set<String>, CausalModel> without) {
    this.whole = whole;
    this.without = without;
  }

  /** Models from the cards of a rule base. */
  public static GateModels of(RuleBase base) {
    CardEffects effects = CardEffects.of(base);
    LastFew<Set<String>, CausalModel> last = new LastFew<>(KEPT);
    return new GateModels(
        CardModel.of(base, effects, Set.of()),
        impossible -> last.get(impossible, i -> CardModel.of(base, effects, i)));
  }

  /** Models from a single one, in which impossible causes are only ruled out. */
  public static GateModels of(CausalModel model) {
    return new GateModels(
        model,
        impossible ->
            model.withOdds(impossible.stream().collect(Collectors.toMap(c -> c, c -> 0.0))));
  }

  /** The model with all causes, for any gate. */
  public CausalModel whole() {
    return whole;
  }

  /**
   * The model for a gate.
   *
   * @param odds factors on the odds of causes there; 0 for a cause that cannot be present
   */
  public CausalModel at(Map<String, Double> odds) {
    Map<String, Double> moved = new TreeMap<>(odds);
    moved.values().removeIf(factor -> factor == 0);
    Set<String> impossible =
        odds.keySet().stream().filter(c -> !moved.containsKey(c)).collect(Collectors.toSet());
    return (impossible.isEmpty() ? whole : without.apply(impossible)).withOdds(moved);
  }
}
