package yett.trial;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yett.belief.Decibans;
import yett.interview.Moment;
import yett.interview.Trail;

/**
 * What one answer weighed for the causes in view, by what was known before it.
 *
 * @param subject check, complaint, repair, "retest" or {@link #OUTSET}
 * @param words what it was taken to mean
 * @param decibans cause to the change of its log-odds, to a tenth
 */
record Weighed(String subject, String words, Map<String, Double> decibans) {
  /** What rules a cause out or makes it certain has no number; this one stands for it. */
  static final double BEYOND = 200;

  /** Stands for what was known before any answer. */
  static final String OUTSET = "at the outset";

  /** Less than this is not worth a line. */
  private static final double LEAST = 0.5;

  /** What is empty is left out of a file. */
  Weighed {
    words = words == null ? "" : words;
    decibans = decibans == null ? Map.of() : decibans;
  }

  /** Where the causes in view stand before any answer, as log-odds. */
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

  /** For these causes alone; empty if the answer weighed nothing for them. */
  Optional<Weighed> of(Set<String> causes) {
    Map<String, Double> some = new TreeMap<>(decibans);
    some.keySet().retainAll(causes);
    return subject.equals(OUTSET) || !some.isEmpty()
        ? Optional.of(new Weighed(subject, words, some))
        : Optional.empty();
  }

  /** A weight as people read it. */
  static String words(double weight) {
    return Math.abs(weight) >= BEYOND
        ? "off the scale"
        : String.format(Locale.ROOT, "%+.1f dB", weight);
  }

  private static double rounded(double weight) {
    return Math.round(Math.max(-BEYOND, Math.min(BEYOND, weight)) * 10) / 10.0;
  }
}
