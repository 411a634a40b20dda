package yett.knowledge;

import java.util.Map;

/**
 * A recent event that multiplies the odds of causes.
 *
 * @param lay question to a caller; empty if the name will do
 */
public record History(String id, String name, String lay, Map<String, Double> odds, String source)
    implements Card {

  /** A copy with other odds. */
  History withOdds(Map<String, Double> other) {
    return new History(id, name, lay, other, source);
  }

  /** In words that a lay person understands. */
  public String spoken() {
    return lay.isEmpty() ? name : lay;
  }
}
