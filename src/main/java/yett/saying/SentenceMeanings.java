package yett.saying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yett.meaning.Meanings;

/** Compares the meaning of a clause with the sentences on cards. */
final class SentenceMeanings {
  /** Approximate similarity of two unrelated sentences. */
  private static final double STRANGE = 0.2;

  /**
   * By how much the fit of a danger, or of "all is well", falls for a clause that denies something.
   */
  private static final double DENIED = 0.25;

  private final Meanings meanings;
  private final List<Thing> owners = new ArrayList<>();
  private final List<float[]> directions = new ArrayList<>();

  /**
   * For each sentence, whether it reports a danger or that all is well, without denying anything.
   */
  private final List<Boolean> affirmed = new ArrayList<>();

  SentenceMeanings(Meanings meanings) {
    this.meanings = meanings;
  }

  /**
   * Adds the sentences of a thing.
   *
   * @param denied whether a "no" in a clause speaks against the thing
   */
  void add(Thing thing, List<String> sentences, boolean denied) {
    for (String sentence : sentences) {
      owners.add(thing);
      affirmed.add(denied && !Negation.in(sentence));
      directions.add(meanings.of(sentence));
    }
  }

  /**
   * The fit of each thing to a clause, 0 to 1; only things closer to it than unrelated sentences
   * are to each other.
   */
  Map<Thing, Double> fits(String clause) {
    float[] said = meanings.of(clause);
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
