package yett.knowledge;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The words that may stand for a likelihood, with the chance of each, from the table {@code
 * shared/likelihood-words.csv}. The figures follow a published study of what people mean by such
 * words (F. Mosteller and C. Youtz, Quantifying probabilistic expressions, Statistical Science 5,
 * 1990; from memory, rounded). No word means certain or impossible.
 */
public final class LikelihoodWords {
  private static final Map<String, Double> ALL = read();

  private LikelihoodWords() {}

  /** Words and chances, the likeliest first. */
  public static Map<String, Double> all() {
    return ALL;
  }

  /** The word whose chance is nearest to this one. */
  public static String nearest(double chance) {
    return ALL.entrySet().stream()
        .min(Comparator.comparingDouble(e -> Math.abs(e.getValue() - chance)))
        .orElseThrow()
        .getKey();
  }

  static OptionalDouble chance(String word) {
    Double chance = ALL.get(word.strip());
    return chance == null ? OptionalDouble.empty() : OptionalDouble.of(chance);
  }

  /** The words with their figures, for a message. */
  static String list() {
    return String.join(", ", ALL.entrySet().stream().map(LikelihoodWords::shown).toList());
  }

  static String shown(Map.Entry<String, Double> entry) {
    return entry.getKey() + " " + entry.getValue();
  }

  private static Map<String, Double> read() {
    Map<String, Double> all = new LinkedHashMap<>();
    List<Map<String, String>> rows = SharedTable.read("likelihood-words.csv");
    rows.forEach(row -> all.put(row.get("word"), Double.valueOf(row.get("chance"))));
    return java.util.Collections.unmodifiableMap(all);
  }
}
