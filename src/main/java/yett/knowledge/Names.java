package yett.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody probably meant. */
public final class Names {
  private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

  private Names() {}

  /** The known name nearest to what was written, if one is near enough to be meant. */
  public static Optional<String> nearest(String written, Collection<String> known) {
    return byDistance(written, known).stream()
        .findFirst()
        .filter(name -> DISTANCE.apply(written, name) <= Math.max(2, written.length() / 3));
  }

  /** Advice for an unknown name: the nearest one, and what is allowed, nearest first. */
  public static String advice(String written, Collection<String> known) {
    if (known.isEmpty()) {
      return "";
    }
    List<String> sorted = byDistance(written, known);
    String maybe = nearest(written, known).map(n -> "Maybe \"" + n + "\". ").orElse("");
    String rest = String.join(", ", sorted.subList(0, Math.min(8, sorted.size())));
    return maybe + "Known: " + rest + (sorted.size() > 8 ? ", …" : "") + ".";
  }

  private static List<String> byDistance(String written, Collection<String> known) {
    return known.stream()
        .sorted(
            Comparator.<String>comparingInt(name -> DISTANCE.apply(written, name))
                .thenComparing(Comparator.naturalOrder()))
        .toList();
  }
}
