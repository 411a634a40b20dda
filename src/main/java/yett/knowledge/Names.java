package yett.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody probably meant. */
public final class Names {
  private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

  private Names() {}

  private record Known(String name, int distance) {}

  /** The known name nearest to what was written, if one is near enough to be meant. */
  public static Optional<String> nearest(String written, Collection<String> known) {
    return nearest(written, byDistance(written, known));
  }

  private static Optional<String> nearest(String written, List<Known> sorted) {
    return sorted.stream()
        .findFirst()
        .filter(known -> known.distance() <= Math.max(2, written.length() / 3))
        .map(Known::name);
  }

  /** Advice for an unknown name: the nearest one, and what is allowed, nearest first. */
  public static String advice(String written, Collection<String> known) {
    if (known.isEmpty()) {
      return "";
    }
    List<Known> sorted = byDistance(written, known);
    String maybe = nearest(written, sorted).map(n -> "Maybe \"" + n + "\". ").orElse("");
    String rest = sorted.stream().limit(8).map(Known::name).collect(Collectors.joining(", "));
    return maybe + "Known: " + rest + (sorted.size() > 8 ? ", …" : "") + ".";
  }

  private static List<Known> byDistance(String written, Collection<String> known) {
    return known.stream()
        .map(name -> new Known(name, DISTANCE.apply(written, name)))
        .sorted(Comparator.comparingInt(Known::distance).thenComparing(Known::name))
        .toList();
  }
}
