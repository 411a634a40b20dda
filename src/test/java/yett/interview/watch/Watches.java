package yett.interview.watch;

import java.util.List;
import yett.interview.event.Entry;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Judgement;

/** Hands the parts of the watch to tests in other packages, which have single steps looked at. */
public final class Watches {
  private final RuleBase base;
  private final PlainReading plain;

  /** Looks at steps after these events. */
  public Watches(RuleBase base, List<Entry> entries) {
    this.base = base;
    this.plain = new PlainReading(entries);
  }

  /** A watch that does not check how so many events at the beginning came about. */
  public static SafetyWatch after(RuleBase base, int events) {
    return new SafetyWatch(base, events);
  }

  /** Whether the watched case came to a stop. */
  public static boolean sawStop(SafetyWatch watch) {
    return watch.sawStop();
  }

  /** Whether the watched case was closed as repaired. */
  public static boolean sawClosedAsRepaired(SafetyWatch watch) {
    return watch.sawClosedAsRepaired();
  }

  /** Throws if the step is unsafe in the set-ups in force. */
  public void state(Judgement judgement, Role role, Step step) {
    new StateWatch(base, judgement, plain, role).look(step);
  }

  /** Throws if this person may not do the step, or not like this. */
  public void step(Role role, Step step) {
    step.accept(new StepWatch(base, plain, role)).run();
  }
}
