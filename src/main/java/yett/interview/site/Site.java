package yett.interview.site;

import java.util.List;
import java.util.Map;
import yett.knowledge.SiteCard;

/**
 * A gate as it is installed.
 *
 * @param answers to every site question that applies: a choice's id, or a reading as typed
 */
public record Site(Map<String, String> answers) {

  /** Whether a card applies at such a gate; not if a question that it depends on does not. */
  public boolean allows(SiteCard card) {
    return card.onlyIf().entrySet().stream()
        .allMatch(c -> answers.containsKey(c.getKey()) && has(c.getKey(), c.getValue()));
  }

  private boolean has(String question, List<String> allowed) {
    return allowed.contains(answers.get(question));
  }
}
