package yett.interview;

import java.util.Map;
import yett.knowledge.SiteCard;

/**
 * A gate as it is installed.
 *
 * @param answers to every site question that applies: a choice's id, or a reading as typed
 */
public record Site(Map<String, String> answers) {

  /** Whether a card applies at such a gate. */
  public boolean allows(SiteCard card) {
    return card.onlyIf().entrySet().stream()
        .allMatch(c -> c.getValue().contains(answers.get(c.getKey())));
  }
}
