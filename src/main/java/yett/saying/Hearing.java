package yett.saying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.meaning.Meanings;
import yett.meaning.NoModelException;

/**
 * The index over everything that a person can say of a gate: how well each of it fits what was
 * said, by words, and by meaning where the program has the model. Made in the background, because
 * it takes a second or two. May be used by several threads.
 */
public final class Hearing {
  /** How near two sentences are that have nothing to do with one another, about. */
  private static final double STRANGE = 0.2;

  /** What the words count alone: names and headwords mean little as sentences. */
  private static final double NAMED = 0.5;

  /** How much less a danger, or that all is well, fits a clause that denies something. */
  private static final double DENIED = 0.25;

  private final RuleBase base;
  private final Map<String, Thing> byKey = new HashMap<>();
  private final Phrases phrases;
  private final Optional<Meanings> meanings;
  private final Calibration calibration;
  private final List<Thing> owners = new ArrayList<>();
  private final List<float[]> directions = new ArrayList<>();

  /** Which of them say that there is danger or that all is well, and deny nothing. */
  private final List<Boolean> affirmed = new ArrayList<>();

  /** What hears danger by the program's own cards alone; made when words come in. */
  private Hearing own;

  private String why = "";

  /** By words and by meaning; by words alone if there is no model. */
  public static Hearing of(RuleBase base) {
    try {
      return new Hearing(base, Optional.of(Meanings.load()));
    } catch (NoModelException e) {
      Hearing hearing = byWords(base);
      hearing.why = e.getMessage();
      return hearing;
    }
  }

  /** By words alone. */
  public static Hearing byWords(RuleBase base) {
    return new Hearing(base, Optional.empty());
  }

  private Hearing(RuleBase base, Optional<Meanings> meanings) {
    this.base = base;
    this.meanings = meanings;
    this.calibration = meanings.isPresent() ? Calibration.WITH_MEANINGS : Calibration.BY_WORDS;
    Map<String, List<String>> words = new LinkedHashMap<>();
    Sayable.of(base)
        .forEach(
            (thing, ways) -> {
              words(thing, ways.words(), words);
              meanings.ifPresent(m -> directions(m, thing, ways.sentences()));
            });
    phrases = new Phrases(words, base.telephone().spoken().synonyms());
  }

  /** Talk is a heap of sentences that have nothing in common: each counts by itself. */
  private void words(Thing thing, List<String> ways, Map<String, List<String>> words) {
    if (thing.kind() == Thing.Kind.NOTHING) {
      ways.forEach(w -> words.put(thing.key() + "/" + w, List.of(w)));
      ways.forEach(w -> byKey.put(thing.key() + "/" + w, thing));
    } else {
      words.put(thing.key(), ways);
      byKey.put(thing.key(), thing);
    }
  }

  private void directions(Meanings all, Thing thing, List<String> sentences) {
    for (String sentence : sentences) {
      owners.add(thing);
      affirmed.add(isDenied(thing) && !Negation.in(sentence));
      directions.add(all.of(sentence));
    }
  }

  /** Whether a "no" in a clause speaks against it: the others are mostly told with one. */
  private boolean isDenied(Thing thing) {
    return thing.kind() == Thing.Kind.DANGER
        || thing.kind() == Thing.Kind.OUTCOME
            && base.checks().get(thing.card()).indexOf(thing.outcome()) == 0;
  }

  /** Why meanings are not compared; empty if they are. */
  public Optional<String> withoutMeanings() {
    return meanings.isPresent() ? Optional.empty() : Optional.of(why);
  }

  /**
   * The same by the program's own cards alone, if others are laid over them. No sentence or synonym
   * of theirs may keep a danger from being asked about.
   */
  synchronized Optional<Hearing> withoutAddOns() {
    if (own == null && !base.addOns().isEmpty()) {
      own = new Hearing(ShippedKnowledge.ruleBase(), meanings);
    }
    return Optional.ofNullable(own);
  }

  RuleBase base() {
    return base;
  }

  Phrases phrases() {
    return phrases;
  }

  Calibration calibration() {
    return calibration;
  }

  int size() {
    return byKey.size();
  }

  Thing thing(String key) {
    return byKey.get(key);
  }

  /** How well things fit a clause, 0 to 1; those that do not fit at all are not among them. */
  Map<Thing, Double> fits(String clause) {
    Map<Thing, Double> byWords = new HashMap<>();
    phrases.fits(clause).forEach((key, fit) -> byWords.merge(byKey.get(key), fit, Math::max));
    if (meanings.isEmpty()) {
      return byWords;
    }
    double meaning = calibration.meaning();
    Map<Thing, Double> fits = byMeaning(clause);
    fits.replaceAll((thing, fit) -> meaning * fit);
    byWords.forEach((thing, fit) -> fits.merge(thing, (1 - meaning) * fit, Double::sum));
    byWords.forEach((thing, fit) -> fits.merge(thing, NAMED * fit, Math::max));
    return fits;
  }

  private Map<Thing, Double> byMeaning(String clause) {
    float[] said = meanings.orElseThrow().of(clause);
    Map<Thing, Double> best = new HashMap<>();
    boolean denies = Negation.in(clause);
    for (int i = 0; i < directions.size(); i++) {
      double near = (Meanings.nearness(said, directions.get(i)) - STRANGE) / (1 - STRANGE);
      near -= denies && affirmed.get(i) ? DENIED : 0;
      if (near > 0) {
        best.merge(owners.get(i), near, Math::max);
      }
    }
    return best;
  }
}
