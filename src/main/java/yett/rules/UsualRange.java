package yett.rules;

import java.util.Map;
import java.util.Set;
import yett.rules.Conclusion.Expectation;
import yett.rules.Fact.Site;

/**
 * A row of a table as a fact: the usual range of a reading at the gates that it speaks of. One
 * rule, the same for all rows, concludes from it; nothing of a row is ever part of a rule's text.
 *
 * @param check whose reading it is
 * @param low canonical unit
 * @param how where the range comes from, for people
 * @param reason the name of the row stands as the name of the rule
 * @param gates by site question; all of them hold at a gate, or the row does not speak of it
 */
public record UsualRange(
    String check, double low, double high, String how, Reason reason, Map<String, Gates> gates) {

  /** Whether this answer is to a question of the row, and one that it asks for. */
  public boolean meets(Site answer) {
    Gates wanted = gates.get(answer.question());
    return wanted != null && wanted.hold(answer);
  }

  /** How many answers it asks for. */
  public int conditions() {
    return gates.size();
  }

  public Expectation expectation() {
    return new Expectation(check, low, high, how, reason);
  }

  /**
   * Gates with one of the choices, or with a reading in a range.
   *
   * @param from in the canonical unit
   */
  record Gates(Set<String> choices, double from, double below) {
    private boolean hold(Site answer) {
      return choices.contains(answer.choice()) || answer.value() >= from && answer.value() < below;
    }
  }
}
