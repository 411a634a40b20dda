package yett.interview;

import java.util.List;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Answers that can hardly all be right, given the rule base.
 *
 * @param parts the answers, in their order
 * @param bits how much less probable they are together than each by itself, as a power of 2
 * @param weighed false if no set of causes allows the last of them: then it is kept in the case and
 *     not weighed
 */
public record Conflict(List<Part> parts, double bits, boolean weighed) {

  /**
   * @param event number of the event; 0 for a complaint
   */
  public record Part(long event, String check, String outcome) {
    private String words(RuleBase base) {
      Check check = base.checks().get(check());
      int index = check.indexOf(outcome);
      // Of a band the name, because its text is a range.
      String said =
          check.measured() || index < 0
              ? outcome.replace('-', ' ')
              : check.outcomes().get(index).text();
      return event == 0 ? "reported \"" + check.ask() + "\"" : "\"" + check.ask() + "\" " + said;
    }
  }

  /** One or two sentences with a full stop. */
  public String words(RuleBase base) {
    String answers = parts.stream().map(p -> p.words(base)).collect(Collectors.joining("; "));
    String beginning =
        parts.size() > 1
            ? "These answers hardly go together: "
            : "This hardly goes together with what was known: ";
    return beginning + answers + "." + (weighed ? "" : " The last one is kept, but not weighed.");
  }
}
