package yett.saying;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Finds what somebody tells without being asked: dangers, complaints, outcomes of checks, things
 * that were measured, effects, what happened lately and what is pressing. Only what to ask back:
 * words never count by themselves. Proofs are not among it, because a proof is made in its turn.
 * May be used by several threads.
 */
public final class Tellings {
  /** Less of the words beside a reading than this and a measurement was not meant. */
  private static final double ENOUGH = 0.45;

  /** Of what is measured, its name alone is said beside the reading, and rarely in full. */
  private static final double NEARLY = 0.45;

  private static final int MOST = 5;

  private final Hearing hearing;

  public Tellings(Hearing hearing) {
    this.hearing = hearing;
  }

  /** What may be meant by words without a reading; both lists are empty if nothing is. */
  public Heard hear(String words) {
    return Listening.to(words, hearing);
  }

  /**
   * Which of some measured checks a reading may belong to, by the words beside it: names, which
   * mean nothing as sentences.
   *
   * @param words without the reading
   * @param checks ids of those that can have such a reading
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
