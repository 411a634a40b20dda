package yett.rules;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The answers that a row of a table accepts: one of these words, or a reading in one of these
 * ranges.
 */
public record Accepted(Set<String> words, List<Span> spans) {
  /**
   * A range of readings.
   *
   * @param from lower end, included; canonical unit
   * @param below upper end, not included; canonical unit
   */
  public record Span(double from, double below) {
    private boolean holds(double reading) {
      return reading >= from && reading < below;
    }

    private boolean meets(Span other) {
      return Math.max(from, other.from) < Math.min(below, other.below);
    }
  }

  /** One of the words; empty if only readings are accepted. */
  public Optional<String> example() {
    return words.stream().sorted().findFirst();
  }

  boolean admits(String word, double reading) {
    return words.contains(word) || spans.stream().anyMatch(s -> s.holds(reading));
  }

  /** Whether some answer is accepted by both. */
  boolean meets(Accepted other) {
    return !Collections.disjoint(words, other.words)
        || spans.stream().anyMatch(s -> other.spans.stream().anyMatch(s::meets));
  }
}
