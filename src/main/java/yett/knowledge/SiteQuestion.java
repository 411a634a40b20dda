package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A question about the gate as installed.
 *
 * @param name a few words for lists
 * @param choices answers by id with their words, in order; empty for a measured one
 * @param usual the default: a choice's id or a reading with its unit
 */
public record SiteQuestion(
    String id,
    String name,
    String ask,
    Optional<Measures> measures,
    Map<String, String> choices,
    String usual,
    String why,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {
  /** The one that is about the day and not about the gate. */
  public static final String TEMPERATURE_TODAY = "usual-temperature";

  /** As good as one of all parts, which Java would put together at every start. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }
}
