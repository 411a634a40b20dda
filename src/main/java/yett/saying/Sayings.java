package yett.saying;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;

/**
 * Ranks the complaints by how well they fit what a caller says, even if nothing fits well.
 * Thread-safe.
 */
public final class Sayings {
  /** Least fit for a complaint. */
  private static final double LEAST = 0.2;

  private final Hearing hearing;
  private final Map<String, Check> complaints = new LinkedHashMap<>();

  public Sayings(Hearing hearing) {
    this.hearing = hearing;
    hearing.base().complaints().forEach(c -> complaints.put(c.id(), c));
  }

  /**
   * A complaint that was probably meant.
   *
   * @param share of the total score; all shares add up to at most 1
   */
  public record Heard(Check complaint, double share) {}

  /**
   * The complaints that were probably meant, the most probable first; empty if no word is known.
   */
  public List<Heard> hear(String words, int most) {
    Map<String, Double> fits = new HashMap<>();
    List<String> clauses = Clauses.of(words);
    for (String clause : clauses) {
      double weight = clause.equals(clauses.get(0)) ? 1 : 1.0 / (clauses.size() - 1);
      hearing
          .fits(clause)
          .forEach(
              (thing, fit) -> {
                if (thing.kind() == Thing.Kind.COMPLAINT) {
                  fits.merge(thing.card(), weight * fit, Double::sum);
                }
              });
    }
    double sum = fits.values().stream().mapToDouble(Double::doubleValue).sum();
    return fits.entrySet().stream()
        .filter(e -> e.getValue() >= LEAST)
        .sorted(
            Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(most)
        .map(e -> new Heard(complaints.get(e.getKey()), e.getValue() / sum))
        .toList();
  }
}
