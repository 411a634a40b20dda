package yett.benchmark;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/** Plays a case on an invented rule base: a fault is drawn, and every check shows what it would. */
final class InventedCase {
  private static final int MOST_STEPS = 60;

  private final Expertise expertise;
  private final SplittableRandom random;
  private final TreeSet<Integer> present = new TreeSet<>();
  private final List<Entry> entries = new ArrayList<>();

  InventedCase(Expertise expertise, long seed) {
    this.expertise = expertise;
    this.random = new SplittableRandom(seed);
  }

  /** The events of a case from the opening to its end. */
  List<Entry> play() {
    RuleBase base = expertise.base();
    while (present.isEmpty()) {
      int c = 0;
      for (Cause cause : base.causes().values()) {
        if (random.nextDouble() < cause.prior()) {
          present.add(c);
        }
        c++;
      }
    }
    record(new Event.Opened("Harrow Quay, gate 1", Role.TECHNICIAN, base.fingerprint()));
    record(new Event.SiteTaken());
    record(
        new Event.Complained(
            base.complaints().stream().filter(c -> shown(c) == 1).map(Check::id).toList()));
    record(new Event.Happened(List.of()));
    try (Interview interview = expertise.newInterview()) {
      for (int steps = 0; steps < MOST_STEPS; steps++) {
        Moment moment = interview.at(entries);
        if (!respond(moment.step())) {
          return List.copyOf(entries);
        }
      }
    }
    return List.copyOf(entries);
  }

  private boolean respond(Step step) {
    if (step instanceof Step.Ask s) {
      String outcome = s.check().outcomes().get(shown(s.check())).id();
      record(new Event.Answered(s.check().id(), new Answer.Chosen(outcome)));
    } else if (step instanceof Step.Enter s) {
      record(s.done());
    } else if (step instanceof Step.Leave s) {
      record(s.done());
    } else if (step instanceof Step.Mend s) {
      s.repair()
          .removes()
          .forEach(
              (cause, chance) -> {
                if (random.nextDouble() < chance) {
                  present.remove(expertise.model().indexOf(cause));
                }
              });
      record(new Event.Repaired(s.repair().id(), true));
    } else if (step instanceof Step.Retest) {
      record(new Event.Retested(present.isEmpty()));
    } else {
      return false;
    }
    return true;
  }

  /** What a check shows now, as a position. */
  private int shown(Check check) {
    int[] causes = present.stream().mapToInt(Integer::intValue).toArray();
    double[] chances = expertise.model().table(check.id()).outcomeChances(causes);
    int y = 0;
    for (double u = random.nextDouble(); y < chances.length - 1 && u > chances[y]; y++) {
      u -= chances[y];
    }
    return y;
  }

  private void record(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }
}
