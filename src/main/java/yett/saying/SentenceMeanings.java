package yett.saying;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.meaning.Meanings;

/** How near in meaning a clause is to the sentences of cards. */
final class SentenceMeanings {
  /** How near two sentences are that have nothing to do with one another, about. */
  private static final double STRANGE = 0.2;

  /** How much less a danger, or that all is well, fits a clause that denies something. */
  private static final double DENIED = 0.25;

  /** How much less a danger fits where both deny something, but not the same. */
  private static final double OTHER_DENIED = 0.1;

  /** How much less a danger fits a clause that tells of what is not now. */
  private static final double FAR = 0.2;

  /** How much less fits what says that the gate stands at its other end. */
  private static final double OTHER_END = 0.15;

  private final Meanings meanings;
  private final List<Sentence> sentences = new ArrayList<>();

  SentenceMeanings(Meanings meanings) {
    this.meanings = meanings;
  }

  /** What a model of meanings hardly tells apart: what is denied, past or feared, open or shut. */
  private record Manner(boolean negated, Set<String> denies, boolean notNow, Standing standing) {
    static Manner of(String words) {
      return new Manner(
          Negation.in(words), Negation.denied(words), NotNow.in(words), Standing.in(words));
    }
  }

  /**
   * @param deniable whether a "no" in a clause speaks against it
   */
  private record Sentence(Thing owner, boolean deniable, Manner manner, float[] direction) {
    double less(Manner said) {
      double less = said.standing().isOther(manner.standing()) ? OTHER_END : 0;
      if (deniable && said.negated() && !manner.negated()) {
        less += DENIED;
      }
      if (owner.kind() == Thing.Kind.DANGER) {
        less += said.notNow() && !manner.notNow() ? FAR : 0;
        boolean both = said.negated() && manner.negated();
        less += both && Collections.disjoint(said.denies(), manner.denies()) ? OTHER_DENIED : 0;
      }
      return less;
    }
  }

  /**
   * @param denied whether a "no" in a clause speaks against the thing
   */
  void add(Thing thing, List<String> ways, boolean denied) {
    for (String way : ways) {
      sentences.add(new Sentence(thing, denied, Manner.of(way), meanings.of(way)));
    }
  }

  /** The things that a clause is nearer to than strange ones are to each other, 0 to 1. */
  Map<Thing, Double> fits(String clause) {
    float[] said = meanings.of(Filler.without(clause));
    Manner manner = Manner.of(clause);
    Map<Thing, Double> best = new HashMap<>();
    for (Sentence sentence : sentences) {
      double near = (Meanings.nearness(said, sentence.direction()) - STRANGE) / (1 - STRANGE);
      near -= sentence.less(manner);
      if (near > 0) {
        best.merge(sentence.owner(), near, Math::max);
      }
    }
    return best;
  }
}
