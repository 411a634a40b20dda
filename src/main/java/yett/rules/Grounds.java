package yett.rules;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yett.rules.Fact.Happened;
import yett.rules.Fact.Site;

/**
 * The conditions under which a row of a table applies: what is installed, and what happened
 * recently.
 *
 * @param site by question; all must hold
 * @param happened histories; one of each set must have happened
 * @param notHappened histories; none may have happened
 */
public record Grounds(
    Map<String, Accepted> site, List<Set<String>> happened, Set<String> notHappened) {

  /** Whether a fact matters for these conditions. */
  boolean concern(Fact fact) {
    if (fact instanceof Site answer) {
      Accepted accepted = site.get(answer.question());
      return accepted != null && accepted.admits(answer.choice(), answer.value());
    }
    return fact instanceof Happened lately
        && (notHappened.contains(lately.history())
            || happened.stream().anyMatch(some -> some.contains(lately.history())));
  }

  /**
   * Whether the conditions hold.
   *
   * @param concerned all facts that matter for them
   */
  boolean hold(Set<?> concerned) {
    Set<String> installed = new HashSet<>();
    Set<String> lately = new HashSet<>();
    for (Object fact : concerned) {
      if (fact instanceof Site answer) {
        installed.add(answer.question());
      } else if (fact instanceof Happened history) {
        lately.add(history.history());
      }
    }
    return installed.size() == site.size()
        && happened.stream().noneMatch(some -> Collections.disjoint(some, lately))
        && Collections.disjoint(notHappened, lately);
  }

  /** Each condition in words. */
  Set<String> conditions() {
    Set<String> conditions = new TreeSet<>();
    site.forEach((question, accepted) -> conditions.add(question + " " + accepted));
    happened.forEach(some -> conditions.add("happened " + new TreeSet<>(some)));
    notHappened.forEach(history -> conditions.add("not happened " + history));
    return conditions;
  }
}
