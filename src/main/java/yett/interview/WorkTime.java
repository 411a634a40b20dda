package yett.interview;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Minutes that the cards give for what was done: checks, repairs, entering and leaving set-ups. A
 * check that could not be told took its time all the same; one that was put off took none. Trying
 * the gate after a repair has no card and counts nothing.
 */
public final class WorkTime {
  private WorkTime() {}

  /** Minutes of one event. */
  public static double minutes(Event event, RuleBase base) {
    if (event instanceof Event.Answered e) {
      Check check = base.checks().get(e.check());
      return check == null || e.answer().putOff() ? 0 : check.minutes();
    }
    if (event instanceof Event.Repaired e) {
      Repair repair = base.repairs().get(e.repair());
      return repair == null || !e.done() ? 0 : repair.minutes();
    }
    if (event instanceof Event.SetUpEntered e) {
      SetUp setUp = base.setUps().get(e.setUp());
      return setUp == null ? 0 : setUp.enterMinutes();
    }
    if (event instanceof Event.SetUpLeft e) {
      SetUp setUp = base.setUps().get(e.setUp());
      return setUp == null ? 0 : setUp.leaveMinutes();
    }
    return 0;
  }

  /** Minutes of a case, without what was retracted. */
  public static double minutes(List<Entry> entries, RuleBase base) {
    Set<Long> retracted = new HashSet<>();
    for (Entry entry : entries) {
      if (entry.event() instanceof Event.Retracted e) {
        retracted.add(e.event());
      }
    }
    return entries.stream()
        .filter(e -> !retracted.contains(e.number()))
        .mapToDouble(e -> minutes(e.event(), base))
        .sum();
  }
}
