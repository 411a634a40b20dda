package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * The wordings that people use, by card, for understanding what they say.
 *
 * @param sayings complaint, history, effect or pressing to examples of how people put it, by kind
 *     of card and then by its id
 * @param outcomes check to outcome to examples of how people put it
 * @param tellsOf complaint or pressing to the dangers that are asked about when it is said: check
 *     to outcome, by kind of card and then by its id
 * @param nothing sentences that say nothing about a gate
 * @param synonyms word or words to others that people use for the same
 */
public record Spoken(
    Map<String, Map<String, List<String>>> sayings,
    Map<String, Map<String, List<String>>> outcomes,
    Map<String, Map<String, Map<String, String>>> tellsOf,
    List<String> nothing,
    Map<String, List<String>> synonyms) {

  /** No wordings. */
  public static final Spoken NONE = new Spoken(Map.of(), Map.of(), Map.of(), List.of(), Map.of());

  /** Examples of how people describe a card of a kind: complaint, history, effect, pressing. */
  public List<String> of(String kind, String id) {
    return sayings.getOrDefault(kind, Map.of()).getOrDefault(id, List.of());
  }

  /**
   * The dangers that are asked about when a card of a kind is said: check to outcome; empty if it
   * tells of none.
   */
  public Map<String, String> dangers(String kind, String id) {
    return tellsOf.getOrDefault(kind, Map.of()).getOrDefault(id, Map.of());
  }

  /** Examples of how people describe an outcome of a check. */
  public List<String> of(Check check, Check.Outcome outcome) {
    return outcomes.getOrDefault(check.id(), Map.of()).getOrDefault(outcome.id(), List.of());
  }
}
