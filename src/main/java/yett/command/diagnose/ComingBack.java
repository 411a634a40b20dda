package yett.command.diagnose;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Moment;
import yett.knowledge.Role;
import yett.wording.CallWords;

/**
 * Asks a person who resumes a case whether the gate is still as it was left. Only somebody who
 * never went away can confirm that; everybody else checks it step by step.
 */
record ComingBack(Sitting sitting, Questions questions) {
  /**
   * Longest absence after which somebody is asked whether they kept lock and key in sight. A
   * judgement.
   */
  private static final Duration SHORT = Duration.ofMinutes(30);

  void ask() {
    Moment moment = sitting.moment();
    boolean returned = goThroughStates(moment);
    Entry last = moment.entries().get(moment.entries().size() - 1);
    boolean wasThere = last.by() != Role.CALLER && !isCall(); // else the telephone's words yield
    if (wasThere && (returned || isSomebodyElse(last))) {
      sitting.record(new Event.DangersAgain()); // whoever comes to the gate looks for themselves
    }
  }

  /** Returns whether what is in force has to be gone through because somebody was away. */
  private boolean goThroughStates(Moment moment) {
    Set<String> inForce = moment.state().work().setUps();
    if (moment.state().work().unseen().containsAll(inForce)) {
      return false; // nothing is in force, or all of it is checked anyway
    }
    Entry last = moment.entries().get(moment.entries().size() - 1);
    sitting.show(
        Block.signal(
            SignalWord.WARNING,
            "It was left on "
                + CallWords.when(last.at())
                + " with this in force: "
                + inForce.stream()
                    .map(id -> sitting.base().setUps().get(id).name().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining("; "))
                + ". A lock, a lead or a chock may have been moved since."));
    if (!isHereStill(last)) {
      sitting.record(new Event.Returned());
      sitting.say("Before anything else, go through it step by step and prove dead again.");
      return true;
    }
    return false;
  }

  private boolean isCall() {
    return sitting.open().role() == Role.CALLER;
  }

  private boolean isSomebodyElse(Entry last) {
    Duration away = Duration.between(last.at(), sitting.open().now());
    return last.by() != sitting.open().role() || away.compareTo(SHORT) > 0;
  }

  private boolean isHereStill(Entry last) {
    if (isSomebodyElse(last)) {
      return false;
    }
    sitting.say(
        "Have you been here all the time with the key on you, and is everything as you"
            + " left it?");
    return questions
            .word(
                "yes, or no",
                List.of("yes", "no"),
                "Type yes only if you never left the gate and nobody touched it; else no.")
            .orElse(1)
        == 0;
  }
}
