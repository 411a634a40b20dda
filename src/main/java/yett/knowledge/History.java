package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * A recent event that multiplies the odds of causes.
 *
 * @param lay question to a caller; empty if the name will do
 * @param onlyIf site question to the answers under which it can have happened; empty means always
 */
public record History(
    String id,
    String name,
    String lay,
    Map<String, Double> odds,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {

  /** A copy with other odds. */
  History withOdds(Map<String, Double> other) {
    return new History(id, name, lay, other, onlyIf, source);
  }

  /** In words that a lay person understands. */
  public String spoken() {
    return lay.isEmpty() ? name : lay;
  }
}
