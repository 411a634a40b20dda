package yett.saying;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds what somebody mentions without being asked: dangers, complaints, outcomes of checks,
 * measured quantities, effects, recent events and urgent matters. The result is only for asking
 * back: words are never an answer by themselves. Proofs are left out, because a proof is made when
 * it is due. Thread-safe.
 */
public final class Tellings {
  /** Least share of the words beside a reading for which a measurement counts as meant. */
  private static final double ENOUGH = 0.45;

  /**
   * A further check is offered if its fit is at least this share of the best; low, because people
   * rarely say the full name of what they measured.
   */
  private static final double NEARLY = 0.45;

  private static final int MOST = 5;

  private static final int ENOUGH_WORDS = 4;

  /** Words said at a question are about it; they may fit its answers less well than others do. */
  private static final double ANSWERS = 0.3;

  /** An answer that fits this much less than the best one is not offered beside it. */
  private static final double LESS = 0.15;

  private static final int ANSWERS_AT_MOST = 2;

  /** The same line is heard several times: for dangers, for what it answers, for its end. */
  private record Last(String words, Heard heard) {}

  private final Hearing hearing;
  private final KnownNames names;
  private volatile Last last = new Last("", new Heard(List.of(), List.of()));

  public Tellings(Hearing hearing) {
    this(hearing, KnownNames.NONE);
  }

  /**
   * @param names of gates, in which no danger is heard
   */
  public Tellings(Hearing hearing, KnownNames names) {
    this.hearing = hearing;
    this.names = names;
  }

  /** The possible meanings of words without a reading; both lists are empty if there are none. */
  public Heard hear(String words) {
    Last known = last;
    if (!known.words().equals(words)) {
      known = new Last(words, listen(words));
      last = known;
    }
    return known.heard();
  }

  /**
   * What each part of these words most probably means, if they say several things. Parts of few
   * words are left out, because they are torn out of what they mean: "and comes back".
   */
  public List<Heard.Found> parts(String words) {
    return Clauses.of(words).stream()
        .skip(1)
        .filter(part -> part.split("\\s+").length >= ENOUGH_WORDS)
        .flatMap(part -> listen(part).findings().stream().limit(1))
        .toList();
  }

  /** A name can only take a danger away that is heard in nothing but the name. */
  private Heard listen(String words) {
    Heard heard = Listening.to(words, hearing);
    String nameless = heard.dangers().isEmpty() ? words : names.without(words);
    return nameless.equals(words) ? heard : Listening.to(nameless, hearing);
  }

  /**
   * The outcomes of a check that words typed at its question may mean, the best first, whatever
   * else the words may mean.
   */
  public List<Thing> answers(String check, String words) {
    Map<Thing, Double> fits = new HashMap<>();
    for (String clause : Clauses.of(words)) {
      hearing
          .fits(clause)
          .forEach(
              (thing, fit) -> {
                if (thing.kind() == Thing.Kind.OUTCOME && thing.card().equals(check)) {
                  fits.merge(thing, fit, Math::max);
                }
              });
    }
    double best = fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return fits.entrySet().stream()
        .filter(e -> e.getValue() >= Math.max(ANSWERS, best - LESS))
        .sorted(
            Map.Entry.<Thing, Double>comparingByValue()
                .reversed()
                .thenComparing(e -> e.getKey().outcome()))
        .limit(ANSWERS_AT_MOST)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The dangers that any of these lines may mean. */
  public Set<Thing> dangers(Collection<String> lines) {
    return lines.stream()
        .flatMap(line -> hear(line).dangerThings().stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * The measured checks that a reading may belong to, from the words beside it. Only words are
   * compared, because names mean little as sentences.
   *
   * @param words without the reading
   * @param checks ids of the checks for which the reading is possible
   */
  public List<String> hearReading(String words, Collection<String> checks) {
    Phrases phrases = hearing.phrases();
    String said = words.toLowerCase(Locale.ROOT);
    record Fit(String check, double fit) {}
    List<Fit> fits =
        phrases.hear(said, hearing.size()).stream()
            .filter(h -> hearing.thing(h.id()).kind() == Thing.Kind.READING)
            .filter(h -> checks.contains(hearing.thing(h.id()).card()))
            .map(
                h -> {
                  double covered = phrases.coversTimeless(said, h.id());
                  double fit = covered < ENOUGH ? 0 : h.share() * covered * covered;
                  return new Fit(hearing.thing(h.id()).card(), fit);
                })
            .filter(f -> f.fit() > 0)
            .sorted((a, b) -> Double.compare(b.fit(), a.fit()))
            .toList();
    return fits.stream()
        .filter(f -> f.fit() >= NEARLY * fits.get(0).fit())
        .map(Fit::check)
        .limit(MOST)
        .toList();
  }
}
