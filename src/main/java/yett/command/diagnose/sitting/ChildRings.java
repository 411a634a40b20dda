package yett.command.diagnose.sitting;

import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.saying.OnTheLine;

/**
 * Asks whether a child is on the telephone if the words sound like it. What a child is not asked to
 * do is said by the rules; a grown-up who comes to the telephone ends it.
 */
public final class ChildRings {
  private static final String FETCH =
      "Please fetch a grown-up and let them talk to me. Until then stay away from the gate: do not"
          + " touch it and press nothing for it, and keep other children away from it.";

  private final Sitting sitting;
  private boolean asking;
  private boolean grownUp;

  public ChildRings(Sitting sitting) {
    this.sitting = sitting;
  }

  /**
   * @throws MovedOnException if something else comes now than what was asked
   */
  void hear(String line) {
    if (asking) {
      return;
    }
    boolean child = isChild();
    if (!child && !grownUp && OnTheLine.mayBeChild(line)) {
      if (isGrownUpThere("A child may be on the telephone. Is a grown-up on the line? yes or no")) {
        grownUp = true;
        return;
      }
      fetch(line);
    } else if (child && OnTheLine.mayBeGrownUp(line)) {
      askAnew(line);
    }
  }

  /** Asks whether it is still the child who rings. */
  public void askAnew() {
    if (isChild()) {
      askAnew("");
    }
  }

  private boolean isChild() {
    return isOn(sitting);
  }

  /** Whether a child is on the telephone, and no grown-up. */
  public static boolean isOn(Sitting sitting) {
    return sitting.moment().state().role() == Role.CALLER
        && CallLog.of(sitting.moment().entries()).isChild();
  }

  private boolean isGrownUpThere(String prompt) {
    asking = true;
    try {
      return sitting.yes(prompt);
    } finally {
      asking = false;
    }
  }

  private void fetch(String line) {
    Step before = sitting.moment().step();
    if (!(before instanceof Step.AskDangers)) { // else the child is asked about them first
      sendForGrownUp();
    }
    sitting.record(new Event.Tended(Tending.CHILD, ""), new Event.Noted(Event.Noted.CHILD));
    moveOn(line, before);
  }

  /**
   * Reads out to the child what it does; a child who has gone to fetch somebody answers nothing.
   */
  public void sendForGrownUp() {
    sitting.show(Block.paragraph(Text.of("Read out: ").and(Text.strong(FETCH))));
    sitting.say("Nothing is asked that needs a hand at the gate. Type: grown-up, when one comes.");
  }

  /** The child was asked about few dangers; a grown-up goes through all of them. */
  private void askAnew(String line) {
    Step before = sitting.moment().step();
    if (isGrownUpThere("A child rang. Is a grown-up on the line now? yes or no")) {
      sitting.record(new Event.Tended(Tending.GROWN_UP, ""), new Event.DangersAgain());
      if (!line.isEmpty()) {
        moveOn(line, before);
      }
    }
  }

  /** What was asked before is asked only if it still comes next. */
  private void moveOn(String line, Step before) {
    if (!sitting.moment().step().equals(before)) {
      sitting.record(new Event.Said(line));
      throw new MovedOnException();
    }
  }
}
