package yett.knowledge;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Suggests the name that was probably meant. */
public final class Names {
  private static final LevenshteinDistance DISTANCE = LevenshteinDistance.getDefaultInstance();

  /** Most names that a message lists in full. */
  private static final int LONG = 20;

  private static final int FEW = 8;

  /** So short a name is like no other. */
  private static final int SHORT = 2;

  private static final Pattern ID = Pattern.compile("[a-z0-9]++(-[a-z0-9]++)*+");
  private static final int LONGEST_ID = 80;

  private Names() {}

  /** Whether this is a valid id for a card, an outcome, a band or a choice. */
  public static boolean isId(String text) {
    return text.length() <= LONGEST_ID && ID.matcher(text).matches();
  }

  private record Known(String name, int distance) {
    /** Whether these words are a part of the name, between hyphens. */
    boolean hasPart(String words) {
      return !words.isEmpty() && ("-" + name + "-").contains("-" + words + "-");
    }
  }

  /** The known name nearest to the written one, if one is near enough. */
  public static Optional<String> nearest(String written, Collection<String> known) {
    return nearest(written, byDistance(written, known));
  }

  private static Optional<String> nearest(String written, List<Known> sorted) {
    return sorted.stream()
        .findFirst()
        .filter(known -> known.distance() <= Math.max(2, written.length() / 3))
        .map(Known::name);
  }

  /** The indefinite article for a word with a space after it: "an " or "a ". */
  public static String article(String word) {
    return "aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ";
  }

  /**
   * Advice for an unknown name: the nearest one, then all allowed names in alphabetical order. Of a
   * long list, only the most similar names and the total.
   */
  public static String advice(String written, Collection<String> known) {
    if (known.isEmpty()) {
      return "";
    }
    List<Known> sorted = byDistance(written, known);
    String maybe = nearest(written, sorted).map(n -> "Maybe \"" + n + "\". ").orElse("");
    if (known.size() > LONG && maybe.isEmpty() && written.length() <= SHORT) {
      return "There are " + known.size() + " to choose from.";
    }
    return known.size() > LONG
        ? maybe
            + "Nearest of "
            + known.size()
            + ": "
            + names(
                sorted.stream()
                    .sorted(Comparator.comparing(k -> !k.hasPart(written))) // stable
                    .limit(FEW))
        : maybe + "Known: " + names(sorted.stream().sorted(Comparator.comparing(Known::name)));
  }

  private static String names(Stream<Known> known) {
    return known.map(Known::name).collect(Collectors.joining(", ", "", "."));
  }

  private static List<Known> byDistance(String written, Collection<String> known) {
    String begin =
        written.substring(0, Math.min(written.length(), LONGEST_ID)); // time grows with its square
    return known.stream()
        .map(name -> new Known(name, DISTANCE.apply(begin, name)))
        .sorted(Comparator.comparingInt(Known::distance).thenComparing(Known::name))
        .toList();
  }
}
