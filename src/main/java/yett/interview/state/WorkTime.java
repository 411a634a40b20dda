package yett.interview.state;

import java.util.List;
import java.util.function.ToDoubleFunction;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Adds up the minutes that the cards give for the work done: checks, repairs, entering and leaving
 * set-ups. A check that could not be told counts; one that was put off does not. A retest has no
 * card and counts nothing.
 */
public final class WorkTime {
  private WorkTime() {}

  /** Minutes of one event. */
  public static double minutes(Event event, RuleBase base) {
    return event.accept(new Minutes(base));
  }

  /** Minutes of a case, without what was retracted. */
  public static double minutes(List<Entry> entries, RuleBase base) {
    return Entry.valid(entries).stream().mapToDouble(e -> minutes(e.event(), base)).sum();
  }

  private record Minutes(RuleBase base) implements SomeEvents<Double> {
    @Override
    public Double answered(Event.Answered event) {
      return event.answer().putOff() ? 0 : of(base.checks().get(event.check()), Check::minutes);
    }

    @Override
    public Double repaired(Event.Repaired event) {
      return event.done() ? of(base.repairs().get(event.repair()), Repair::minutes) : 0;
    }

    @Override
    public Double setUpEntered(Event.SetUpEntered event) {
      return of(base.setUps().get(event.setUp()), SetUp::enterMinutes);
    }

    @Override
    public Double setUpLeft(Event.SetUpLeft event) {
      return of(base.setUps().get(event.setUp()), SetUp::leaveMinutes);
    }

    @Override
    public Double other(Event event) {
      return 0.0;
    }

    /** The card's minutes; 0 if the card has left the rule base since. */
    private static <C> double of(C card, ToDoubleFunction<C> minutes) {
      return card == null ? 0 : minutes.applyAsDouble(card);
    }
  }
}
