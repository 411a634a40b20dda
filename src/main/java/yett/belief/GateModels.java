package yett.belief;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.knowledge.RuleBase;

/**
 * The causal model of a rule base for each gate. A cause that cannot be there is left out as if it
 * had no card: how probable the others and the unknown are must not depend on cards that speak of
 * other gates.
 */
public final class GateModels {
  /** Few kinds of gates make up most cases, and a model takes long to make. */
  private static final int KEPT = 16;

  private final CausalModel whole;
  private final Function<Set<String>, CausalModel> without;

  private GateModels(CausalModel whole, Function<Set<String>, CausalModel> without) {
    this.whole = whole;
    this.without = without;
  }

  /** Of the cards. */
  public static GateModels of(RuleBase base) {
    CardEffects effects = CardEffects.of(base);
    LastFew<Set<String>, CausalModel> last = new LastFew<>(KEPT);
    return new GateModels(
        CardModel.of(base, effects, Set.of()),
        impossible -> last.get(impossible, i -> CardModel.of(base, effects, i)));
  }

  /** Of one model in which a cause that cannot be somewhere is only ruled out. */
  public static GateModels of(CausalModel model) {
    return new GateModels(
        model,
        impossible ->
            model.withOdds(impossible.stream().collect(Collectors.toMap(c -> c, c -> 0.0))));
  }

  /** With all causes, wherever they can be. */
  public CausalModel whole() {
    return whole;
  }

  /**
   * At a gate.
   *
   * @param odds factors of the causes' odds there; 0 for a cause that cannot be there
   */
  public CausalModel at(Map<String, Double> odds) {
    Map<String, Double> moved = new TreeMap<>(odds);
    moved.values().removeIf(factor -> factor == 0);
    Set<String> impossible =
        odds.keySet().stream().filter(c -> !moved.containsKey(c)).collect(Collectors.toSet());
    return (impossible.isEmpty() ? whole : without.apply(impossible)).withOdds(moved);
  }
}
