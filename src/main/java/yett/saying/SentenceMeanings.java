package yett.saying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import yett.meaning.Meanings;

/** How near in meaning a clause is to the sentences of cards. */
final class SentenceMeanings {
  /** How near two sentences are that have nothing to do with one another, about. */
  private static final double STRANGE = 0.2;

  /** How much less a danger, or that all is well, fits a clause that denies something. */
  private static final double DENIED = 0.25;

  /**
   * How much less a danger fits a clause that tells of what is not now, and such talk a clause that
   * does not.
   */
  private static final double FAR = 0.2;

  /** How much less fits what says that the gate stands at its other end. */
  private static final double OTHER_END = 0.15;

  /** How much less fits what says that something else ran into something else. */
  private static final double OTHER_STRIKER = 0.25;

  /** Sentences that have to say an end before a thing counts as being about it. */
  private static final int ENOUGH = 5;

  private static final double MOSTLY = 0.9;

  private final Meanings meanings;
  private final List<Sentence> sentences = new ArrayList<>();
  private final Map<Thing, Standing> standings = new ConcurrentHashMap<>();

  SentenceMeanings(Meanings meanings) {
    this.meanings = meanings;
  }

  /**
   * What a model of meanings hardly tells apart: what is denied, past or feared, which end, who.
   */
  private record Manner(boolean negated, boolean notNow, Standing standing, Striker striker) {
    static Manner of(String words) {
      return new Manner(
          Negation.in(words), NotNow.in(words), Standing.in(words), Striker.in(words));
    }

    /** Whether both say it, and not the same. */
    static <T> boolean differ(T one, T other, T unsaid) {
      return one != unsaid && other != unsaid && one != other;
    }
  }

  private final class Sentence {
    private final Thing owner;
    private final String words;
    private final boolean deniable;
    private final float[] direction;

    /** Worked out when it first matters: most sentences are far from what anybody says. */
    private Manner manner;

    /**
     * @param deniable whether a "no" in a clause speaks against it
     */
    Sentence(Thing owner, String words, boolean deniable, float[] direction) {
      this.owner = owner;
      this.words = words;
      this.deniable = deniable;
      this.direction = direction;
    }

    private Manner manner() {
      Manner known = manner;
      if (known == null) {
        known = Manner.of(words);
        manner = known; // another thread may do the same, with the same result
      }
      return known;
    }

    /** The end that it says, or else the one that the thing is mostly said to be about. */
    private Standing standing() {
      Standing own = manner().standing();
      return own == Standing.UNSAID ? standings.computeIfAbsent(owner, t -> ofMost(t)) : own;
    }

    double less(Manner said) {
      boolean denied = deniable && said.negated() && !manner().negated();
      return (denied ? DENIED : 0)
          + (isFar(said) ? FAR : 0)
          + (Manner.differ(said.standing(), standing(), Standing.UNSAID) ? OTHER_END : 0)
          + (Manner.differ(said.striker(), manner().striker(), Striker.UNSAID) ? OTHER_STRIKER : 0);
    }

    /** Whether only one of the two is now, where that matters: to dangers and to talk of them. */
    private boolean isFar(Manner said) {
      return switch (owner.kind()) {
        case DANGER -> said.notNow() && !manner().notNow();
        case NOTHING -> manner().notNow() && !said.notNow();
        default -> false;
      };
    }
  }

  /**
   * @param denied whether a "no" in a clause speaks against the thing
   */
  void add(Thing thing, List<String> ways, boolean denied) {
    for (String way : ways) {
      sentences.add(new Sentence(thing, way, denied, meanings.of(way)));
    }
  }

  /** The end at which the gate stays, if the sentences of a thing say one and hardly the other. */
  private Standing ofMost(Thing thing) {
    Map<Standing, Long> said =
        sentences.stream()
            .filter(s -> s.owner.equals(thing))
            .collect(Collectors.groupingBy(s -> s.manner().standing(), Collectors.counting()));
    long open = said.getOrDefault(Standing.OPEN, 0L);
    long shut = said.getOrDefault(Standing.SHUT, 0L);
    return Math.max(open, shut) < ENOUGH || Math.max(open, shut) < MOSTLY * (open + shut)
        ? Standing.UNSAID
        : open > shut ? Standing.OPEN : Standing.SHUT;
  }

  /** The things that a clause is nearer to than strange ones are to each other, 0 to 1. */
  Map<Thing, Double> fits(String clause) {
    float[] said = meanings.of(Filler.without(clause));
    Manner manner = Manner.of(clause);
    Map<Thing, Double> best = new HashMap<>();
    for (Sentence sentence : sentences) {
      double near = (Meanings.nearness(said, sentence.direction) - STRANGE) / (1 - STRANGE);
      if (near > best.getOrDefault(sentence.owner, 0.0)) {
        double fit = near - sentence.less(manner);
        if (fit > 0) {
          best.merge(sentence.owner, fit, Math::max);
        }
      }
    }
    return best;
  }
}
