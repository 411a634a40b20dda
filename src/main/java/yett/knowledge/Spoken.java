package yett.knowledge;

import java.util.List;
import java.util.Map;

/**
 * How people say things, so that others are understood who say them in other words.
 *
 * @param sayings complaint, history, effect or pressing to examples of how people put it, by kind
 *     of card and then by its id
 * @param outcomes check to outcome to examples of how people put it
 * @param tellsOf complaint or pressing to the dangers that are asked about when it is said: check
 *     to outcome, by kind of card and then by its id
 * @param nothing what says nothing of a gate
 * @param synonyms word or words to others that people use for the same
 */
public record Spoken(
    Map<String, Map<String, List<String>>> sayings,
    Map<String, Map<String, List<String>>> outcomes,
    Map<String, Map<String, Map<String, String>>> tellsOf,
    List<String> nothing,
    Map<String, List<String>> synonyms) {

  /** Nothing at all. */
  public static final Spoken NONE = new Spoken(Map.of(), Map.of(), Map.of(), List.of(), Map.of());

  /** Examples of how people tell of a card of a kind: complaint, history, effect, pressing. */
  public List<String> of(String kind, String id) {
    return sayings.getOrDefault(kind, Map.of()).getOrDefault(id, List.of());
  }

  /** Examples of how people tell of an outcome of a check. */
  public List<String> of(Check check, Check.Outcome outcome) {
    return outcomes.getOrDefault(check.id(), Map.of()).getOrDefault(outcome.id(), List.of());
  }
}
