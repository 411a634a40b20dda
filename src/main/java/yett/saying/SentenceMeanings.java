package yett.saying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yett.meaning.Meanings;

/** How near in meaning a clause is to the sentences of cards. */
final class SentenceMeanings {
  /** How near two sentences are that have nothing to do with one another, about. */
  private static final double STRANGE = 0.2;

  /** How much less a danger, or that all is well, fits a clause that denies something. */
  private static final double DENIED = 0.25;

  /** How much less a danger fits a clause that tells of what is not now. */
  private static final double FAR = 0.2;

  private final Meanings meanings;
  private final List<Thing> owners = new ArrayList<>();
  private final List<float[]> directions = new ArrayList<>();

  /** Which of them say that there is danger or that all is well, and deny nothing. */
  private final List<Boolean> affirmed = new ArrayList<>();

  /** Which of them tell of a danger that is there now. */
  private final List<Boolean> present = new ArrayList<>();

  SentenceMeanings(Meanings meanings) {
    this.meanings = meanings;
  }

  /**
   * @param denied whether a "no" in a clause speaks against the thing
   */
  void add(Thing thing, List<String> sentences, boolean denied) {
    for (String sentence : sentences) {
      owners.add(thing);
      affirmed.add(denied && !Negation.in(sentence));
      present.add(thing.kind() == Thing.Kind.DANGER && !NotNow.in(sentence));
      directions.add(meanings.of(sentence));
    }
  }

  /** The things that a clause is nearer to than strange ones are to each other, 0 to 1. */
  Map<Thing, Double> fits(String clause) {
    float[] said = meanings.of(clause);
    Map<Thing, Double> best = new HashMap<>();
    boolean denies = Negation.in(clause);
    boolean far = NotNow.in(clause);
    for (int i = 0; i < directions.size(); i++) {
      double near = (Meanings.nearness(said, directions.get(i)) - STRANGE) / (1 - STRANGE);
      near -= denies && affirmed.get(i) ? DENIED : 0;
      near -= far && present.get(i) ? FAR : 0;
      if (near > 0) {
        best.merge(owners.get(i), near, Math::max);
      }
    }
    return best;
  }
}
