package yett.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Adds the rows on the cards of causes and effects to the checks, complaints, proofs and histories
 * concerned. So a new cause can be written on one card, without editing every check that it shows
 * on.
 *
 * @param effects checks, histories and repairs as well: these maps are changed; cards in them are
 *     replaced by cards with the rows
 */
record CauseRows(
    Map<String, Cause> causes,
    Map<String, Effect> effects,
    Map<String, Check> checks,
    Map<String, History> histories,
    Map<String, Repair> repairs,
    RuleBaseReader.Places places) {
  static final String SHOWS = "shows";
  static final String AFTER = "after";
  static final String REMOVED_BY = "removed-by";

  private static final String WHERE_ROWS_ARE = "check, complaint or proof";
  private static final double LEAST_ODDS = 0.01;
  private static final double MOST_ODDS = 100;

  void place() {
    Map<String, Map<String, double[]>> rows = new LinkedHashMap<>();
    for (String cause : causes.keySet()) {
      Fields card = places.of("cause", cause);
      Fields shows = card.inner(SHOWS);
      shows.names().forEach(check -> row(cause, shows, check, rows));
      Map<String, Double> after = card.numbers(AFTER, LEAST_ODDS, MOST_ODDS);
      after.forEach((history, odds) -> odds(cause, card, history, odds));
      card.chances(REMOVED_BY).forEach((repair, chance) -> repair(cause, card, repair, chance));
    }
    rows.forEach(
        (check, more) -> {
          Map<String, double[]> all = new LinkedHashMap<>(checks.get(check).likelihood());
          all.putAll(more);
          checks.put(check, checks.get(check).withLikelihood(all));
        });
    effects.replaceAll((id, effect) -> withRows(effect));
    new EffectRows(effects).place(causes.values(), checks);
  }

  private void row(
      String cause, Fields shows, String name, Map<String, Map<String, double[]>> rows) {
    Check check = checks.get(name);
    if (check == null) {
      unknown(shows, name, WHERE_ROWS_ARE, name, checks.keySet());
    } else if (check.likelihood().containsKey(cause)) {
      twice(shows, name, cause, "likelihood", name);
    } else {
      rows.computeIfAbsent(name, n -> new LinkedHashMap<>())
          .put(cause, CardReader.row(shows, name, check));
    }
  }

  private Effect withRows(Effect effect) {
    Fields shows = places.of("effect", effect.id()).inner(SHOWS);
    Map<String, double[]> rows = new LinkedHashMap<>();
    for (String name : shows.names()) {
      Check check = checks.get(name);
      if (check == null) {
        unknown(shows, name, WHERE_ROWS_ARE, name, checks.keySet());
      } else {
        rows.put(name, CardReader.row(shows, name, check));
      }
    }
    return new Effect(
        effect.id(), effect.name(), effect.area(), rows, effect.leadsTo(), effect.source());
  }

  private void odds(String cause, Fields card, String name, double odds) {
    History history = histories.get(name);
    String place = AFTER + "/" + name;
    if (history == null) {
      unknown(card, place, "history", name, histories.keySet());
    } else if (history.odds().containsKey(cause)) {
      twice(card, place, cause, "odds", name);
    } else {
      Map<String, Double> all = new LinkedHashMap<>(history.odds());
      all.put(cause, odds);
      histories.put(name, history.withOdds(all));
    }
  }

  private void repair(String cause, Fields card, String name, double chance) {
    Repair repair = repairs.get(name);
    String place = REMOVED_BY + "/" + name;
    if (repair == null) {
      unknown(card, place, "repair", name, repairs.keySet());
    } else if (repair.removes().containsKey(cause)) {
      twice(card, place, cause, "removes", name);
    } else {
      Map<String, Double> all = new LinkedHashMap<>(repair.removes());
      all.put(cause, chance);
      repairs.put(name, repair.withRemoves(all));
    }
  }

  private static void unknown(
      Fields fields, String place, String what, String name, Collection<String> known) {
    fields.problem(
        place,
        "unknown-name",
        "there is no " + what + " \"" + name + "\"",
        Names.advice(name, known));
  }

  private static void twice(Fields fields, String place, String cause, String field, String card) {
    fields.problem(
        place,
        "said-twice",
        "\"" + card + "\" already speaks of \"" + cause + "\" in its \"" + field + "\"",
        "Keep one of the two places.");
  }
}
