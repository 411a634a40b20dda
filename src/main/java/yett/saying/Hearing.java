package yett.saying;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
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
  /** What the words count alone: names and headwords mean little as sentences. */
  private static final double NAMED = 0.5;

  /** How well a danger fits at least that is told in plain words. */
  private static final double PLAIN = 0.6;

  /** A danger that fits this much as well without who or what is there is told by what happens. */
  private static final double MOSTLY = 0.65;

  /** What who or what is there may add to another one. */
  private static final double THERE = 0.1;

  /** A breaker that is only said to be down is not said to go again and again. */
  private static final Thing AGAIN_AND_AGAIN =
      new Thing(Thing.Kind.COMPLAINT, "trips-its-breaker", "");

  /** Said of one part, it tells of no fault of that part: "the keypad works fine". */
  private static final Pattern WORKS_WELL =
      Pattern.compile(
          "(?i)\\b(?:works?|is|are|['\u2019]s) (?:just |all |perfectly |quite |still )?"
              + "(?:fine|ok(?:ay)?|perfectly|normally|all right|as (?:ever|usual|always|it should))"
              + "[.!]?$");

  /** The complaint that one way of commanding fails while another works. */
  private static final String ONE_WAY = "one-command-fails";

  /** Who rides a bicycle through the gate does not ride on the gate. */
  private static final Pattern RIDES_PAST =
      Pattern.compile(
          "(?i)\\b(?:bikes?|bicycles?|cycles?|motorbikes?|mopeds?|scooters?|horses?|pon(?:y|ies))\\b");

  /** Below this, no danger is asked about anyway. */
  private static final double LOW = 0.2;

  private final RuleBase base;
  private final Map<String, Thing> byKey = new HashMap<>();
  private final Phrases phrases;
  private final Optional<Meanings> meanings;
  private final Optional<SentenceMeanings> sentences;
  private final Calibration calibration;

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

  /** Dangers have no names, only sentences: "packs up" is no battery pack. */
  private static double named(Thing thing) {
    return thing.kind() == Thing.Kind.DANGER ? 0 : NAMED;
  }

  /**
   * How well things fit a clause, 0 to 1; those that do not fit at all are not among them. A danger
   * that is told in plain words fits at least as well as all else.
   */
  Map<Thing, Double> fits(String clause) {
    Map<Thing, Double> fits = byWordsAndMeaning(clause);
    double most = fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    withoutBystanders(clause, fits);
    boolean down = Tripped.isDown(clause);
    if (down || Tripped.again(clause)) {
      fits.remove(DangerSayings.AS_USUAL);
    }
    if (down) {
      fits.remove(AGAIN_AND_AGAIN);
    }
    if (WORKS_WELL.matcher(clause.strip()).find()) {
      fits.keySet().removeIf(this::isFault);
    }
    if (RIDES_PAST.matcher(clause).find()) {
      fits.keySet().removeIf(t -> t.card().equals("danger-riding"));
    }
    PlainDanger.in(clause).stream()
        .filter(d -> byKey.containsKey(d.key()))
        .forEach(d -> fits.put(d, Math.max(PLAIN, most)));
    return fits;
  }

  /** Whether a thing says that something is wrong; that one way works is half of a complaint. */
  private boolean isFault(Thing thing) {
    return thing.kind() == Thing.Kind.COMPLAINT && !thing.card().equals(ONE_WAY)
        || thing.kind() == Thing.Kind.OUTCOME
            && base.checks().get(thing.card()).indexOf(thing.outcome()) > 0
            && !thing.outcome().contains("works");
  }

  /** A danger that is told only by who or what is there is none. */
  private void withoutBystanders(String clause, Map<Thing, Double> fits) {
    String bare = Bystanders.without(clause);
    if (Bystanders.areAllItSays(clause)) {
      fits.keySet().removeIf(t -> t.kind() == Thing.Kind.DANGER || t.kind() == Thing.Kind.PRESSING);
    } else if (!bare.equals(clause) && fits.entrySet().stream().anyMatch(this::isDanger)) {
      Map<Thing, Double> happens = byWordsAndMeaning(bare);
      fits.replaceAll(
          (thing, fit) -> {
            double told = happens.getOrDefault(thing, 0.0);
            return thing.kind() == Thing.Kind.DANGER && told < MOSTLY * fit ? told + THERE : fit;
          });
    }
  }

  private boolean isDanger(Map.Entry<Thing, Double> fit) {
    return fit.getKey().kind() == Thing.Kind.DANGER && fit.getValue() >= LOW;
  }

  private Map<Thing, Double> byWordsAndMeaning(String clause) {
    Map<Thing, Double> byWords = new HashMap<>();
    phrases.fits(clause).forEach((key, fit) -> byWords.merge(byKey.get(key), fit, Math::max));
    if (meanings.isEmpty()) {
      return byWords;
    }
    double meaning = calibration.meaning();
    Map<Thing, Double> fits = sentences.orElseThrow().fits(clause);
    fits.replaceAll((thing, fit) -> meaning * fit);
    byWords.forEach((thing, fit) -> fits.merge(thing, (1 - meaning) * fit, Double::sum));
    byWords.forEach((thing, fit) -> fits.merge(thing, named(thing) * fit, Math::max));
    return fits;
  }
}
