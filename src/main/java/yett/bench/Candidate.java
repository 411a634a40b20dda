package yett.bench;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Something that an answer may name.
 *
 * @param id to be typed
 * @param words what it stands for; empty if the id says it all
 */
public record Candidate(String id, String words) {

  static final String CHANCE = "a chance of ";

  /** Words that say nothing by themselves. */
  private static final Set<String> SMALL =
      Set.of(
          "a", "an", "and", "as", "at", "by", "does", "for", "from", "in", "is", "it", "its", "no",
          "not", "of", "off", "on", "or", "out", "so", "the", "to", "up", "when", "with");

  /** So many with some of the words are enough to look through; considered judgement. */
  private static final int MOST = 15;

  /**
   * The candidates with all of the typed words in id or name. If there are none, those with some of
   * them, small words apart: those with the most and the rarest words, the best first.
   */
  public static List<Candidate> with(String typed, List<Candidate> all) {
    List<String> wanted = parts(typed).toList();
    List<Candidate> found = all.stream().filter(k -> wanted.stream().allMatch(k::has)).toList();
    return found.isEmpty() ? withSome(wanted, all) : found;
  }

  private static List<Candidate> withSome(List<String> wanted, List<Candidate> all) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (String word : wanted) {
      long with = all.stream().filter(k -> k.has(word)).count();
      if (with > 0 && !SMALL.contains(word)) {
        weights.put(word, 1 + Math.log((double) all.size() / with));
      }
    }
    return all.stream()
        .filter(k -> k.weight(weights) > 0)
        .sorted(Comparator.comparingDouble(k -> -k.weight(weights)))
        .limit(MOST)
        .toList();
  }

  private double weight(Map<String, Double> weights) {
    return weights.entrySet().stream()
        .filter(e -> has(e.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  /** Whether it is a word for how often, which may follow an id. */
  public boolean isChance() {
    return words.startsWith(CHANCE);
  }

  /** Whether one of its words begins like this. */
  private boolean has(String beginning) {
    return Stream.concat(parts(id), parts(words)).anyMatch(w -> w.startsWith(beginning));
  }

  private static Stream<String> parts(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty());
  }
}
