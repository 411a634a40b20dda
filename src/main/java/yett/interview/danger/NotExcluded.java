package yett.interview.danger;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * Dangers that a call did not exclude. This is not the same as a "no".
 *
 * @param untold dangers that nobody could answer
 * @param unasked whether the call ended before all dangers were asked
 */
public record NotExcluded(List<Check> untold, boolean unasked) {
  /** Most dangers that are named; more are only counted. */
  private static final int NAMED = 3;

  public static NotExcluded of(RuleBase base, CaseState state) {
    Site site = new SiteFacts(base).site(state.told().site());
    List<Check> dangers =
        base.ordinaryChecks()
            .filter(c -> c.danger() && c.who() == Role.CALLER)
            .filter(site::allows) // dangers of equipment that the gate has
            .toList();
    List<Check> untold =
        dangers.stream()
            .filter(c -> state.latest(c.id()).filter(a -> !a.answer().tells()).isPresent())
            .toList();
    boolean unasked =
        state.role() == Role.CALLER
            && !state.told().said().isEmpty()
            && dangers.stream().anyMatch(c -> isOpen(c, state));
    return new NotExcluded(untold, unasked);
  }

  private static boolean isOpen(Check danger, CaseState state) {
    return state.latest(danger.id()).filter(a -> a.event() >= state.work().lookAgain()).isEmpty();
  }

  public boolean isEmpty() {
    return untold.isEmpty() && !unasked;
  }

  /** Each danger as a phrase that gives a reason to go and look. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    if (unasked) {
      words.add("dangers not ruled out: the list was not finished");
    }
    if (untold.size() > NAMED) {
      int kinds = untold.stream().mapToInt(c -> c.outcomes().size() - 1).sum(); // as on the list
      words.add(kinds + " kinds of danger not ruled out: nobody could tell");
    } else {
      untold.forEach(c -> words.add("not ruled out: " + outcomes(c)));
    }
    return words;
  }

  private static String outcomes(Check danger) {
    return danger.outcomes().stream()
        .skip(1)
        .map(Check.Outcome::text)
        .collect(Collectors.joining(" or "));
  }
}
