package yett.saying;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.History;
import yett.knowledge.RuleBase;

/**
 * Finds what somebody tells without being asked: dangers, complaints, outcomes of checks, things
 * that were measured, effects and what happened lately. Only what to ask back: words never count by
 * themselves. Proofs are not among it, because a proof is made in its turn. May be used by several
 * threads.
 */
public final class Tellings {
  /** Less of the words than this and a thing was not meant. */
  private static final double ENOUGH = 0.45;

  /** So much is enough of words that hold one by which only danger is told. */
  private static final double ENOUGH_FOR_ALARM = 0.25;

  /** Shorter words of danger are too common: him, her, got. */
  private static final int ALARMING = 4;

  /** A further thing is offered too if it fits nearly as well as the first. */
  private static final double NEARLY = 0.55;

  /** Of what is measured, its name alone is said beside the reading, and rarely in full. */
  private static final double NEARLY_MEASURED = 0.45;

  private static final int MOST = 5;
  private static final int LOOKED_AT = 60;

  /** When it was says nothing of what it was, and neither does a greeting. */
  private static final Pattern WHEN =
      Pattern.compile(
          "\\b(last (night|week|month|year)|yesterday|today|this morning|lately|recently|now"
              + "|a (few )?(days?|weeks?) ago|says?|seems?|think"
              + "|good (morning|afternoon|evening))\\b");

  private final RuleBase base;
  private final Map<String, Thing> things = new LinkedHashMap<>();
  private final Phrases phrases;
  private final Set<String> alarms;

  /** What something told may be about. */
  public enum Kind {
    DANGER,
    COMPLAINT,
    OUTCOME,
    /** A check of which it is not clear which outcome is meant. */
    CHECK,
    READING,
    EFFECT,
    HISTORY
  }

  /**
   * Something that can be told.
   *
   * @param card id of the check, effect or history
   * @param outcome id of an outcome of the check; empty for any other kind
   */
  public record Thing(Kind kind, String card, String outcome) {
    String key() {
      return kind + "/" + card + "/" + outcome;
    }
  }

  /**
   * What was probably meant, the most probable first.
   *
   * @param dangers asked about before anything else
   */
  public record Heard(List<Thing> dangers, List<Thing> others) {}

  private record Fit(Thing thing, double fit) {}

  public Tellings(RuleBase base) {
    this.base = base;
    Map<String, List<String>> said = new LinkedHashMap<>();
    for (Check check : base.checks().values()) {
      if (check.danger()) {
        check.outcomes().stream().skip(1).forEach(o -> danger(base, check, o, said));
      } else if (check.kind() == Check.Kind.CHECK) {
        seen(check, said);
      }
    }
    for (Check complaint : base.complaints()) {
      List<String> ways = new ArrayList<>(List.of(complaint.ask(), complaint.lay()));
      ways.addAll(base.telephone().sayings().getOrDefault(complaint.id(), List.of()));
      add(new Thing(Kind.COMPLAINT, complaint.id(), ""), ways, said);
    }
    for (Effect effect : base.effects().values()) {
      add(new Thing(Kind.EFFECT, effect.id(), ""), List.of(effect.name()), said);
    }
    for (History history : base.histories().values()) {
      add(
          new Thing(Kind.HISTORY, history.id(), ""),
          List.of(history.name(), spaced(history.id())),
          said);
    }
    phrases = new Phrases(said, base.telephone().synonyms());
    alarms = phrases.onlyOf(key -> things.get(key).kind() == Kind.DANGER);
    alarms.removeIf(stem -> stem.length() < ALARMING);
  }

  private static List<String> names(Check check) {
    return List.of(check.ask(), check.lay(), spaced(check.id()));
  }

  private static String spaced(String id) {
    return id.replace('-', ' ');
  }

  private void danger(
      RuleBase base, Check check, Check.Outcome outcome, Map<String, List<String>> said) {
    List<String> ways = DangerSayings.ways(base, check, outcome);
    add(new Thing(Kind.DANGER, check.id(), outcome.id()), ways, said);
  }

  /** A measured check is named by what it measures; a reading has to follow. */
  private void seen(Check check, Map<String, List<String>> said) {
    if (check.measured()) {
      add(new Thing(Kind.READING, check.id(), ""), names(check), said);
      return;
    }
    String name = spaced(check.id());
    for (Check.Outcome outcome : check.outcomes()) {
      add(
          new Thing(Kind.OUTCOME, check.id(), outcome.id()),
          List.of(
              outcome.text(),
              name + " " + spaced(outcome.id()),
              check.ask() + " " + outcome.text()),
          said);
    }
  }

  private void add(Thing thing, List<String> ways, Map<String, List<String>> said) {
    things.put(thing.key(), thing);
    said.put(thing.key(), ways.stream().filter(w -> !w.isBlank()).toList());
  }

  /** What may be meant by words without a reading; both lists are empty if nothing is. */
  public Heard hear(String words) {
    List<Fit> fits = fits(words);
    boolean alarm = isAlarm(words);
    double best = fits.stream().mapToDouble(Fit::fit).max().orElse(0);
    double bestDanger =
        fits.stream()
            .filter(f -> f.thing().kind() == Kind.DANGER)
            .mapToDouble(Fit::fit)
            .max()
            .orElse(0);
    List<Thing> dangers =
        fits.stream()
            .filter(f -> f.thing().kind() == Kind.DANGER)
            .filter(f -> f.fit() >= (alarm ? NEARLY * bestDanger : NEARLY * best))
            .map(Fit::thing)
            .limit(MOST)
            .toList();
    Map<String, Fit> meant = new HashMap<>();
    List<Fit> others = new ArrayList<>();
    for (Fit fit : fits) {
      if (fit.thing().kind() == Kind.OUTCOME) {
        Fit one = meant.computeIfAbsent(fit.thing().card(), card -> meant(card, fits, words));
        boolean other = one.thing().kind() == Kind.OUTCOME && !one.equals(fit);
        if (!other && !others.contains(one)) {
          others.add(one);
        }
      } else if (fit.thing().kind() != Kind.DANGER) {
        others.add(fit);
      }
    }
    return new Heard(dangers, nearly(others, NEARLY));
  }

  /**
   * Of several outcomes of one check, the one whose own words were said; the check itself if that
   * is none, or not one alone.
   */
  private Fit meant(String card, List<Fit> fits, String words) {
    Map<Fit, Double> same = new LinkedHashMap<>();
    fits.stream()
        .filter(f -> f.thing().kind() == Kind.OUTCOME && f.thing().card().equals(card))
        .forEach(f -> same.put(f, said(f.thing(), words)));
    double most = same.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    List<Fit> named = same.keySet().stream().filter(f -> same.get(f) >= most - 1e-9).toList();
    return most > 0 && named.size() == 1
        ? named.get(0)
        : new Fit(new Thing(Kind.CHECK, card, ""), same.keySet().iterator().next().fit());
  }

  /** The share of the words that are the outcome's own and not only the question's. */
  private double said(Thing thing, String words) {
    Check check = base.checks().get(thing.card());
    Check.Outcome outcome = check.outcomes().get(check.indexOf(thing.outcome()));
    return phrases.covered(words, outcome.text() + " " + spaced(outcome.id()));
  }

  /**
   * Which of some measured checks a reading may belong to, by the words beside it.
   *
   * @param words without the reading
   * @param checks ids of those that can have such a reading
   */
  public List<String> hearReading(String words, Collection<String> checks) {
    List<Fit> fits =
        fits(words).stream()
            .filter(f -> f.thing().kind() == Kind.READING && checks.contains(f.thing().card()))
            .toList();
    return nearly(fits, NEARLY_MEASURED).stream().map(Thing::card).toList();
  }

  private static List<Thing> nearly(List<Fit> fits, double share) {
    return fits.stream()
        .filter(f -> f.fit() >= share * fits.get(0).fit())
        .map(Fit::thing)
        .limit(MOST)
        .toList();
  }

  private boolean isAlarm(String words) {
    return phrases.stems(words.toLowerCase(Locale.ROOT)).stream().anyMatch(alarms::contains);
  }

  private List<Fit> fits(String words) {
    double enoughForDanger = isAlarm(words) ? ENOUGH_FOR_ALARM : ENOUGH;
    String small = words.toLowerCase(Locale.ROOT);
    String timeless = WHEN.matcher(small).replaceAll(" ");
    return phrases.hear(small, things.size()).stream()
        .limit(LOOKED_AT)
        .map(
            h -> {
              double covered = phrases.covers(timeless, h.id());
              boolean danger = things.get(h.id()).kind() == Kind.DANGER;
              double fit =
                  covered < (danger ? enoughForDanger : ENOUGH) ? 0 : h.share() * covered * covered;
              return new Fit(things.get(h.id()), fit);
            })
        .filter(t -> t.fit() > 0)
        .sorted(Comparator.comparingDouble(Fit::fit).reversed())
        .toList();
  }
}
