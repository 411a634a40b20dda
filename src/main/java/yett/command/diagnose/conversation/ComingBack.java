package yett.command.diagnose.conversation;

import java.util.List;
import java.util.Set;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.screen.StillInForce;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.Absence;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.wording.CallWords;
import yett.wording.Wording;

/**
 * Asks a person who resumes a case whether the gate is still as it was left. Only somebody who
 * never went away can confirm that. Everybody else looks for dangers again and checks it step by
 * step: also where nothing is in force, because dangers come and go without anybody's doing.
 */
record ComingBack(Sitting sitting, Questions questions) {
  /** The same where the dangers are asked about in any case. */
  void askAndLookAgain() {
    if (!ask()) {
      sitting.record(new Event.DangersAgain());
    }
  }

  /** Asks, and returns whether everything is gone through again. */
  boolean ask() {
    Moment moment = sitting.moment();
    Set<String> inForce = moment.state().work().setUps();
    Absence absence = Absence.since(moment.entries());
    Entry last = absence.last();
    boolean anew = absence.isAnew(role(), sitting.open().now());
    boolean trusted = !moment.state().work().unseen().containsAll(inForce);
    if (trusted) {
      warn(inForce, last);
      anew = anew || !isHereStill();
    }
    if (!anew) {
      return false;
    }
    sitting.record(new Event.Returned());
    if (absence.isOfAnother(role())) {
      sitting.say(
          Wording.capital(Wording.aPerson(last.by()))
              + " answered until now: look for each danger yourself.");
    }
    if (trusted) {
      sitting.say("Then go through it step by step and prove dead again, before anything else.");
    }
    return true;
  }

  private Role role() {
    return sitting.open().role();
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
