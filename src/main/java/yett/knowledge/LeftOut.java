package yett.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Makes a rule base without some of its causes, checks, histories and repairs, to see what
 * difference they make. References to them are removed too. It is for comparison only, never for
 * use at a gate.
 */
public final class LeftOut {
  private final Set<String> cards;

  private LeftOut(Set<String> cards) {
    this.cards = cards;
  }

  /**
   * @param cards as {@code cause chain-slack}
   */
  public static RuleBase of(RuleBase base, Set<String> cards) {
    LeftOut left = new LeftOut(cards);
    Map<String, Repair> repairs = left.repairs(base);
    List<AddOn> addOns = new ArrayList<>(base.addOns());
    List<String> off = List.copyOf(new TreeSet<>(cards));
    addOns.add(new AddOn("left-out", "left out", "left-out/", List.of(), List.of(), off));
    return base.withCards(
            left.causes(base),
            left.checks(base),
            left.kept("history", base.histories(), left::history),
            repairs)
        .ruledBy(base.rules(), base.tables(), List.copyOf(addOns))
        .named(base.fingerprint() + "-without-" + String.join("-", off).replace(' ', '-'));
  }

  private boolean there(String kind, String id) {
    return !cards.contains(kind + " " + id);
  }

  @FunctionalInterface
  private interface Changed<C> {
    C of(C card);
  }

  private <C> Map<String, C> kept(String kind, Map<String, C> all, Changed<C> changed) {
    Map<String, C> kept = new LinkedHashMap<>();
    all.forEach(
        (id, card) -> {
          if (there(kind, id)) {
            kept.put(id, changed.of(card));
          }
        });
    return kept;
  }

  private <V> Map<String, V> ofCauses(Map<String, V> said) {
    Map<String, V> kept = new LinkedHashMap<>(said);
    kept.keySet().removeIf(cause -> !there("cause", cause));
    return kept;
  }

  private Map<String, Cause> causes(RuleBase base) {
    return kept(
        "cause",
        base.causes(),
        c ->
            new Cause(
                c.id(),
                c.name(),
                c.area(),
                c.prior(),
                ofCauses(c.consequences()),
                c.leadsTo(),
                c.retestFails(),
                c.onlyIf(),
                c.arises(),
                c.prevent(),
                c.source()));
  }

  private Map<String, Check> checks(RuleBase base) {
    return kept("check", base.checks(), c -> c.withLikelihood(ofCauses(c.likelihood())));
  }

  private History history(History history) {
    return history.withOdds(ofCauses(history.odds()));
  }

  /** The repairs left; one without a remaining cause is removed. */
  private Map<String, Repair> repairs(RuleBase base) {
    Map<String, Repair> repairs =
        kept("repair", base.repairs(), r -> r.withRemoves(ofCauses(r.removes())));
    repairs
        .values()
        .removeIf(r -> r.removes().isEmpty() && !base.repairs().get(r.id()).removes().isEmpty());
    return repairs;
  }
}
