package yett.saying;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;
import yett.knowledge.Telephone;

/**
 * Finds the dangers that somebody's words describe, from the words of the danger cards and their
 * examples. The result is only for asking back: words are never an answer by themselves, and words
 * without a danger do not mean that there is none. Thread-safe.
 */
public final class DangerSayings {
  /** A further danger is asked about too if its fit is at least this share of the best. */
  private static final double NEARLY = 0.75;

  /**
   * Least fit. It is low because a person who is asked about dangers and says something most likely
   * means one.
   */
  private static final double LEAST = 0.2;

  private static final int MOST = 3;

  /** Who says that it works again tells of no danger by the same words. */
  static final Thing AS_USUAL = new Thing(Thing.Kind.OUTCOME, Telephone.WORKS_AGAIN, "as-usual");

  private final Hearing hearing;
  private final KnownNames names;

  public DangerSayings(Hearing hearing) {
    this(hearing, KnownNames.NONE);
  }

  /**
   * @param names of gates, in which no danger is heard
   */
  public DangerSayings(Hearing hearing, KnownNames names) {
    this.hearing = hearing;
    this.names = names;
  }

  /** An outcome of a danger check that is not the ordinary one. */
  public record Danger(Check check, Check.Outcome outcome) {
    public Thing thing() {
      return new Thing(Thing.Kind.DANGER, check.id(), outcome.id());
    }
  }

  /**
   * The dangers that may be meant, the most probable first; empty if no word is known.
   *
   * @param said in somebody's own words
   * @param asked the dangers that are asked about
   */
  public List<Danger> hear(String said, Collection<Danger> asked) {
    String words = names.without(said);
    Map<Danger, Double> fits = fits(words, asked, hearing);
    hearing
        .withoutAddOns()
        .ifPresent(
            plain -> fits(words, asked, plain).forEach((d, fit) -> fits.merge(d, fit, Math::max)));
    double best = fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return asked.stream()
        .filter(d -> fits.get(d) >= Math.max(LEAST, NEARLY * best))
        .sorted((a, b) -> Double.compare(fits.get(b), fits.get(a)))
        .limit(MOST)
        .toList();
  }

  private static Map<Danger, Double> fits(String words, Collection<Danger> asked, Hearing hearing) {
    Map<Danger, Double> fits = new HashMap<>();
    for (String clause : Clauses.of(words)) {
      Map<Thing, Double> all = hearing.fits(clause);
      double denied = Negation.in(clause) ? all.getOrDefault(Thing.DENIAL, 0.0) : 0;
      double well = all.getOrDefault(AS_USUAL, 0.0);
      double nothing = Math.max(Math.max(all.getOrDefault(Thing.TALK, 0.0), denied), well);
      for (Danger danger : asked) {
        double fit = all.getOrDefault(danger.thing(), 0.0);
        fits.merge(danger, fit < nothing ? 0 : fit, Math::max);
      }
    }
    return fits;
  }
}
