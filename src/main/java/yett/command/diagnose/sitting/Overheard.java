package yett.command.diagnose.sitting;

import java.util.Locale;
import java.util.regex.Pattern;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.saying.Forcing;
import yett.saying.Holding;
import yett.saying.Tripped;

/**
 * Hears, at every prompt of a call, what needs a word to the caller at once, whatever was asked: a
 * child rings, somebody forces or holds the gate, its switch went off once more, or they are about
 * to try it.
 */
final class Overheard {
  private static final String LET_GO =
      "Let go of the gate now and step clear, to the side, away from where it runs. Nobody holds it,"
          + " leans on it or pushes against it: it is stronger than anybody and can start at any"
          + " moment.";

  private static final String NOW_LET_GO = "Let go of the gate now and step clear of it. ";

  private static final String HANDS_OFF =
      "Do not push, pull, lift or climb the gate, and use no tool or vehicle on it: it can fall."
          + " Everybody stands clear on both sides, further away than the gate is high. If it has a"
          + " switch away from it, switch it off there.";

  private static final String LEAVE_IT_OFF =
      "Leave the gate's switch off, and leave the gate as it is: nobody opens or closes it. If it"
          + " was put on again and goes off once more, nobody puts it on a second time.";

  private static final String NOT_YET =
      "Not yet. Touch nothing and press nothing until I ask you to.";

  private static final String NOT_AT_ALL =
      "No. Nobody opens or closes the gate, by a button or by hand, and nobody switches anything on,"
          + " until somebody has looked at it.";

  /** On a call a circuit is switched on in one repair only. */
  private static final String SWITCH_ON = "switch-on-once";

  private static final String TRIPPED = "trips-again";

  private static final Pattern MAY_I =
      Pattern.compile(
          "\\b(?:shall|should|can|could|may|do) (?:i|we|he|she|they|you want me to)"
              + " (?:(?:just|now|maybe|quickly) )*(?:try|press|push|hit|run|open|close|start|switch"
              + "|turn|reset|put)\\b"
              + "|(?<!\\b(?:when|if|once|after|time) )\\bi (?:press|push|try|hit)\\b[^.!]*"
              + "(?:\\bor (?:no|not)\\b|\\?$)");

  private static final Pattern MANY =
      Pattern.compile("(?i)\\b(?:again|twice|times|often|always|every)\\b");

  private final Sitting sitting;
  private final ChildRings child;
  private boolean toldToLeaveOff;

  Overheard(Sitting sitting) {
    this.sitting = sitting;
    this.child = new ChildRings(sitting);
  }

  /**
   * @throws MovedOnException if the line has to do with nothing else, or dangers come first now
   */
  void hear(String line) {
    if (sitting.moment().state().role() != Role.CALLER) {
      return;
    }
    child.hear(line);
    if (!line.contains(" ")) {
      return;
    }
    Step step = sitting.moment().step();
    if (step instanceof Step.Mend mend
        && mend.repair().id().equals(SWITCH_ON)
        && Tripped.before(line)) {
      stopSwitchingOn(line);
    } else if (Forcing.in(line)) {
      handsOff(line);
    } else if (Holding.in(line)) {
      letGo(line);
    } else if (Tripped.again(line) || Tripped.withABang(line)) {
      leaveOff(line);
    } else if (MAY_I.matcher(line.toLowerCase(Locale.ROOT)).find() && step.accept(ASKS)) {
      boolean never =
          step instanceof Step.MakeSafe
              || sitting.moment().judgement().forbidden().contains(SetUp.GATE_RUNNING);
      readOut(never ? NOT_AT_ALL : NOT_YET);
      sitting.record(new Event.Said(line));
      throw new MovedOnException();
    }
  }

  private void readOut(String words) {
    sitting.show(Block.paragraph(Text.of("Read out: ").and(Text.strong(words))));
  }

  private void letGo(String line) {
    readOut(LET_GO);
    sitting.record(new Event.Noted(Event.Noted.HELD + line));
  }

  /** A gate that was forced may be off its track: all dangers are asked about again. */
  private void handsOff(String line) {
    readOut(Forcing.isOnlyMeant(line) ? HANDS_OFF : NOW_LET_GO + HANDS_OFF);
    sitting.record(new Event.Noted(Event.Noted.FORCED + line));
    boolean dangersAreNext =
        sitting.moment().step() instanceof Step.AskDangers
            || sitting.moment().step() instanceof Step.MakeSafe;
    if (dangersAreNext || Forcing.isOnlyMeant(line)) {
      return;
    }
    if (Words.wish(line).isEmpty()) {
      sitting.record(new Event.Said(line));
    }
    sitting.say("It may have left its track or hurt somebody: the dangers come again.");
    sitting.record(new Event.DangersAgain());
    throw new MovedOnException();
  }

  private void leaveOff(String line) {
    if (!toldToLeaveOff) {
      toldToLeaveOff = true;
      readOut(LEAVE_IT_OFF);
      sitting.record(
          new Event.Noted("The gate's switch is to stay off: " + line),
          new Event.Repaired(SWITCH_ON, false));
    }
  }

  /** The step asks to say so if it went off before. */
  private void stopSwitchingOn(String line) {
    readOut(
        "Then leave it off. Nobody switches it on now; somebody has to find out why it goes off.");
    String outcome = MANY.matcher(line).find() ? "again" : "once";
    sitting.record(
        new Event.Said(line),
        new Event.Repaired(SWITCH_ON, false),
        new Event.Answered(TRIPPED, new Answer.Chosen(outcome)));
    throw new MovedOnException();
  }

  /** Steps that only ask; a repair and its retest say themselves what is pressed, and when. */
  private static final SomeSteps<Boolean> ASKS =
      new SomeSteps<>() {
        @Override
        public Boolean askComplaints(Step.AskComplaints step) {
          return true;
        }

        @Override
        public Boolean askPressing(Step.AskPressing step) {
          return true;
        }

        @Override
        public Boolean askHistory(Step.AskHistory step) {
          return true;
        }

        @Override
        public Boolean ask(Step.Ask step) {
          return true;
        }

        @Override
        public Boolean handOver(Step.HandOver step) {
          return true;
        }

        @Override
        public Boolean makeSafe(Step.MakeSafe step) {
          return true;
        }

        @Override
        public Boolean other(Step step) {
          return false;
        }
      };
}
