package yett.command.diagnose.answer;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.Columns;
import yett.knowledge.RuleBase;

/**
 * Answers the look that asks in which of two columns something is out of the ordinary, such as
 * opening or closing, by what was said of the columns of other checks.
 */
public record Difference(RuleBase base, Moment moment) {
  /**
   * The answer, unless the look was answered before, cannot be asked, or nothing is out of the
   * ordinary.
   *
   * @param unusual the columns in which something is out of the ordinary
   */
  public Optional<Event.Answered> by(Columns columns, Collection<String> unusual) {
    return columns
        .tells()
        .filter(id -> !unusual.isEmpty())
        .filter(id -> moment.state().answer(id).isEmpty())
        .filter(id -> !moment.judgement().unavailable().contains(id))
        .map(id -> new Event.Answered(id, answer(base.checks().get(id), Set.copyOf(unusual))));
  }

  /** Of both columns, that there is no difference. */
  private static Answer answer(Check look, Set<String> unusual) {
    return new Answer.Chosen(
        unusual.size() == 1 ? unusual.iterator().next() : look.outcomes().get(0).id());
  }
}
