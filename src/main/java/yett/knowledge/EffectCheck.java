package yett.knowledge;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds effects that nothing shows, that nothing leads to, or that lead back to themselves. */
final class EffectCheck {
  private final RuleBase base;
  private final RuleBaseReader.Places places;
  private final List<Problem> problems;
  private final EffectRows rows;
  private final Set<String> ledTo = new HashSet<>();

  EffectCheck(RuleBase base, RuleBaseReader.Places places, List<Problem> problems) {
    this.base = base;
    this.places = places;
    this.problems = problems;
    this.rows = base.effectRows();
    base.causes().values().forEach(c -> ledTo.addAll(c.leadsTo().keySet()));
    base.effects().values().forEach(e -> ledTo.addAll(e.leadsTo().keySet()));
  }

  void run() {
    base.causes().values().forEach(this::cause);
    base.effects().values().forEach(this::effect);
    if (problems.isEmpty()) { // else the gap may follow from another problem
      base.effects().values().stream().filter(this::isOwnFault).forEach(this::ends);
    }
  }

  private void cause(Cause cause) {
    Fields card = places.of("cause", cause.id());
    known(card, cause.leadsTo());
    if (rows.tooMany(cause)) {
      card.problem(
          CardReader.LEADS_TO,
          "too-many-effects",
          "more than "
              + EffectRows.MOST_LEADING_ON
              + " of the effects that follow from \""
              + cause.id()
              + "\" lead to others",
          "Let the first ones lead straight to what shows.");
    }
  }

  private void effect(Effect effect) {
    Fields card = places.of("effect", effect.id());
    known(card, effect.leadsTo());
    if (rows.leads(effect, effect.id())) {
      card.problem(
          CardReader.LEADS_TO,
          "links-loop",
          "\"" + effect.id() + "\" leads to itself",
          "Take out the link that is least true.");
    }
  }

  private void ends(Effect effect) {
    Fields card = places.of("effect", effect.id());
    if (!ledTo.contains(effect.id())) {
      card.problem(
          "",
          "no-cause",
          "nothing leads to \"" + effect.id() + "\"",
          "Name it under \"leads-to\" of a cause or of another effect.");
    }
    if (card.inner(CauseRows.SHOWS).names().isEmpty() && effect.leadsTo().isEmpty()) {
      card.problem(
          "",
          "no-sign",
          "\"" + effect.id() + "\" shows nothing and leads to nothing",
          "Say under \"shows\" what people see, hear or measure of it.");
    }
  }

  /**
   * Whether a problem of an effect is its own card's fault. An add-on may have removed what led to
   * the effect or showed it.
   */
  private boolean isOwnFault(Effect effect) {
    String card = "effect " + effect.id();
    return base.addOns().isEmpty()
        || base.addOns().stream()
            .anyMatch(a -> a.adds().contains(card) || a.replaces().contains(card));
  }

  private void known(Fields card, Map<String, Double> leadsTo) {
    Collection<String> effects = base.effects().keySet();
    for (String name : leadsTo.keySet()) {
      if (!effects.contains(name)) {
        card.problem(
            CardReader.LEADS_TO + "/" + name,
            "unknown-name",
            "\"" + name + "\" in \"leads-to\" is not known",
            Names.advice(name, effects));
      }
    }
  }
}
