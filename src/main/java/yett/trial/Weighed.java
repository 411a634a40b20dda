package yett.trial;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yett.belief.Decibans;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;

/**
 * What one answer weighed for the causes in view, given what was known before it.
 *
 * @param subject check, complaint, repair, "retest" or {@link #OUTSET}
 * @param words what it was taken to mean
 * @param decibans cause to the change of its log-odds, to a tenth
 */
record Weighed(String subject, String words, Map<String, Double> decibans) {
  /**
   * In decibans; stands for evidence that rules a cause out or makes it certain and has no finite
   * value.
   */
  static final double BEYOND = 200;

  /** The subject for what was known before any answer. */
  static final String OUTSET = "at the outset";

  /** In decibans; less is not worth a line. */
  private static final double LEAST = 0.5;

  /** Fills in what a file leaves out because it is empty. */
  Weighed {
    words = words == null ? "" : words;
    decibans = decibans == null ? Map.of() : decibans;
  }

  /** The log-odds of the causes in view before any answer. */
  static Weighed outset(Iterable<String> causes, Moment moment) {
    Map<String, Double> decibans = new TreeMap<>();
    for (String cause : causes) {
      double prior = moment.trail().prior()[moment.belief().model().indexOf(cause)];
      decibans.put(cause, rounded(Decibans.ofProbability(prior)));
    }
    return new Weighed(OUTSET, "", decibans);
  }

  static Weighed of(Trail.Move move, Iterable<String> causes, Moment moment) {
    Map<String, Double> decibans = new TreeMap<>();
    for (String cause : causes) {
      int c = moment.belief().model().indexOf(cause);
      double weight = Decibans.between(move.before()[c], move.after()[c]);
      if (Math.abs(weight) >= LEAST) {
        decibans.put(cause, rounded(weight));
      }
    }
    return new Weighed(move.subject(), move.words(), decibans);
  }

  /** The evidence for these causes only; empty if there is none. */
  Optional<Weighed> of(Set<String> causes) {
    Map<String, Double> some = new TreeMap<>(decibans);
    some.keySet().retainAll(causes);
    return subject.equals(OUTSET) || !some.isEmpty()
        ? Optional.of(new Weighed(subject, words, some))
        : Optional.empty();
  }

  /** A weight in the form in which people read it. */
  static String words(double weight) {
    return Math.abs(weight) >= BEYOND
        ? "off the scale"
        : String.format(Locale.ROOT, "%+.1f dB", weight);
  }

  private static double rounded(double weight) {
    return Math.round(Math.max(-BEYOND, Math.min(BEYOND, weight)) * 10) / 10.0;
  }
}
