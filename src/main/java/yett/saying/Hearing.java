package yett.saying;

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
 * The index of everything that a person can say about a gate. It gives the fit of each thing to
 * what was said, by words, and by meaning if the program has the language model. It is built in the
 * background, because that takes a second or two. Thread-safe.
 */
public final class Hearing {
  /**
   * Least share of the fit by words that counts whatever the meaning, because names and headwords
   * mean little as sentences.
   */
  private static final double NAMED = 0.5;

  private final RuleBase base;
  private final Map<String, Thing> byKey = new HashMap<>();
  private final Phrases phrases;
  private final Optional<Meanings> meanings;
  private final Optional<SentenceMeanings> sentences;
  private final Calibration calibration;

  /** An index of the program's own cards alone, for dangers; built when first needed. */
  private Hearing own;

  private String why = "";

  /** By words and by meaning; by words alone if there is no language model. */
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
    this.sentences = meanings.map(SentenceMeanings::new);
    this.calibration = meanings.isPresent() ? Calibration.WITH_MEANINGS : Calibration.BY_WORDS;
    Map<String, List<String>> words = new LinkedHashMap<>();
    Sayable.of(base)
        .forEach(
            (thing, ways) -> {
              words(thing, ways.words(), words);
              sentences.ifPresent(s -> s.add(thing, ways.sentences(), isDenied(thing)));
            });
    phrases = new Phrases(words, base.telephone().spoken().synonyms());
  }

  /**
   * Adds the words of a thing. The examples of talk have nothing in common, so each counts alone.
   */
  private void words(Thing thing, List<String> ways, Map<String, List<String>> words) {
    if (thing.kind() == Thing.Kind.NOTHING) {
      ways.forEach(w -> words.put(thing.key() + "/" + w, List.of(w)));
      ways.forEach(w -> byKey.put(thing.key() + "/" + w, thing));
    } else {
      words.put(thing.key(), ways);
      byKey.put(thing.key(), thing);
    }
  }

  /**
   * Whether a "no" in a clause speaks against this thing. Most other things are described with a
   * "no" themselves.
   */
  private boolean isDenied(Thing thing) {
    return thing.kind() == Thing.Kind.DANGER
        || thing.kind() == Thing.Kind.OUTCOME
            && base.checks().get(thing.card()).indexOf(thing.outcome()) == 0;
  }

  /** Why meanings are not used; empty if they are. */
  public Optional<String> withoutMeanings() {
    return meanings.isPresent() ? Optional.empty() : Optional.of(why);
  }

  /**
   * An index of the program's own cards alone, if there are add-ons. So no sentence or synonym in
   * an add-on can prevent a danger from being asked about.
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

  /** The fit of each thing to a clause, 0 to 1; things that do not fit at all are left out. */
  Map<Thing, Double> fits(String clause) {
    Map<Thing, Double> byWords = new HashMap<>();
    phrases.fits(clause).forEach((key, fit) -> byWords.merge(byKey.get(key), fit, Math::max));
    if (meanings.isEmpty()) {
      return byWords;
    }
    double meaning = calibration.meaning();
    Map<Thing, Double> fits = sentences.orElseThrow().fits(clause);
    fits.replaceAll((thing, fit) -> meaning * fit);
    byWords.forEach((thing, fit) -> fits.merge(thing, (1 - meaning) * fit, Double::sum));
    byWords.forEach((thing, fit) -> fits.merge(thing, NAMED * fit, Math::max));
    return fits;
  }
}
