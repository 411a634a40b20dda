package yett.command.diagnose;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Moment;
import yett.knowledge.Role;
import yett.wording.CallWords;
import yett.wording.Wording;

/**
 * Asks a person who resumes a case whether the gate is still as it was left. Only somebody who
 * never went away can confirm that. Everybody else looks for dangers again and checks it step by
 * step: also where nothing is in force, because dangers come and go without anybody's doing.
 */
record ComingBack(Sitting sitting, Questions questions) {
  /**
   * Longest absence after which somebody is asked whether they kept lock and key in sight. A
   * judgement.
   */
  private static final Duration SHORT = Duration.ofMinutes(30);

  void ask() {
    Moment moment = sitting.moment();
    Set<String> inForce = moment.state().work().setUps();
    Entry last = lastAnswer(moment);
    boolean anew = last.by() != role() || isLong(last);
    boolean trusted = !moment.state().work().unseen().containsAll(inForce);
    if (trusted) {
      warn(inForce, last);
      anew = anew || !isHereStill();
    }
    if (!anew) {
      return;
    }
    sitting.record(new Event.Returned());
    if (last.by() != role()) {
      sitting.say(
          Wording.capital(Wording.aPerson(last.by()))
              + " answered until now: look for each danger yourself.");
    }
    if (trusted) {
      sitting.say("Then go through it step by step and prove dead again, before anything else.");
    }
  }

  private Role role() {
    return sitting.open().role();
  }

  /** The last entry of whoever worked on the case, and not of a desk that arranged the visit. */
  private static Entry lastAnswer(Moment moment) {
    return moment.entries().stream()
        .filter(e -> !(e.event() instanceof Event.Tended || e.event() instanceof Event.Unread))
        .reduce((a, b) -> b)
        .orElseThrow();
  }

  private boolean isLong(Entry last) {
    return Duration.between(last.at(), sitting.open().now()).compareTo(SHORT) > 0;
  }

  private void warn(Set<String> inForce, Entry last) {
    sitting.show(
        Block.signal(
            SignalWord.WARNING,
            "It was left on "
                + CallWords.when(last.at())
                + " with this in force: "
                + StillInForce.names(sitting.base(), inForce)
                + ". A lock, a lead or a chock may have been moved since."));
  }

  private boolean isHereStill() {
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
