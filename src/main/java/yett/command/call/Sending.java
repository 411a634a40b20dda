package yett.command.call;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Pattern;
import yett.command.common.NoName;
import yett.command.diagnose.conversation.DispatchedException;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.knowledge.Pressing;
import yett.wording.CallWords;

/** Records who was sent and by when, and who was called for help. */
final class Sending {
  /** Anything later than this does not count as at once. */
  private static final Duration AT_ONCE = Duration.ofHours(4);

  /** Says that nobody was called: "no ambulance, mum has cleaned him up". */
  private static final Pattern NOBODY =
      Pattern.compile(
          "(?i)^(?:no|nobody|none|no one|not needed)$|\\b(?:no|not|nobody|without|did ?n['’]?t|wo"
              + "n['’]?t|does ?n['’]?t)\\b.{0,20}\\b(?:ambulance|doctor|help|police|brigade|call(?:ed)?|needs?)\\b");

  /** Said of a time that is twice a day. */
  private static final String CHOSEN =
      "The time is taken for the %s. If that is wrong: calls sent %s WHO, WHEN, with am or pm.";

  private final Sitting sitting;

  Sending(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Who was sent before, for a call that is taken up again. */
  Optional<String> before() {
    return CallLog.of(sitting.moment().entries()).stage().map(CallWords::of);
  }

  /** Asks who goes, and stores it. */
  void ask(boolean emergency, String level) {
    if (emergency) {
      askHelp();
    }
    Optional<String> before = before();
    String who = whoGoes(before.isPresent());
    if (who.isEmpty() && before.isPresent()) {
      sitting.say("It stays as it was: " + before.get() + ".");
      return;
    }
    Optional<Due.When> due = due(who);
    sitting.record(sent(level, who, due));
    if (due.isEmpty() && !who.isEmpty()) {
      due = askWhen(level, who);
    }
    due.ifPresent(when -> promise(level, when));
  }

  private String whoGoes(boolean somebodyWasSent) {
    while (true) {
      String who =
          told(
              "Who goes, and by when? Such as: Tom, 14:30; "
                  + (somebodyWasSent ? "Enter keeps who was sent before" : "or Enter"));
      if (!NoName.isIn(who)) {
        return who;
      }
      sitting.say("That is no name. Type who goes; press Enter if it is not known yet.");
    }
  }

  private void askHelp() {
    Optional<String> before = StepsDone.helpCalled(sitting);
    String called =
        told(
            before
                .map(
                    b ->
                        "Called for help: "
                            + b
                            + ". Was anybody else called for help, and when? Or Enter")
                .orElse(
                    "Who was called for help, and when? Such as: fire service, 19:42; or Enter"));
    if (NOBODY.matcher(called).find() && !StepsDone.saysWhoCame(called)) {
      StepsDone.keepHelp(sitting, "nobody (" + called + ")");
    } else if (!called.isEmpty()) {
      StepsDone.keepHelp(sitting, called);
    } else if (before.isEmpty()) {
      StepsDone.keepHelp(sitting, "not said who was called");
    }
  }

  private void promise(String level, Due.When when) {
    Instant at = when.at();
    sitting.say(
        "Read out: somebody will be there by " + CallWords.by(at, sitting.open().now()) + ".");
    if (when.isChosen()) {
      sitting.say(
          CHOSEN.formatted(
              partOfDay(at), sitting.isKeptHere() ? "CASE" : sitting.open().id().toString()));
    }
    Duration until = Duration.between(sitting.open().now(), at);
    if (level.equals(Pressing.Urgency.AT_ONCE.words()) && until.compareTo(AT_ONCE) > 0) {
      sitting.say("Somebody is needed at once. Can nobody be there sooner?");
    }
  }

  private static String partOfDay(Instant at) {
    int hour = at.atZone(ZoneId.systemDefault()).getHour();
    return hour < 12 ? "morning" : hour < 17 ? "afternoon" : "evening";
  }

  private Optional<Due.When> due(String words) {
    return Due.when(words, sitting.open().now(), ZoneId.systemDefault());
  }

  private static Event sent(String level, String who, Optional<Due.When> due) {
    return new Event.Tended(
        Tending.SENT,
        level + (who.isEmpty() ? "" : ", " + who),
        due.map(d -> d.at().toString()).orElse(""));
  }

  /**
   * Asks for the time if none was understood together with the name; it is never left out silently.
   */
  private Optional<Due.When> askWhen(String level, String who) {
    String when = told("By when? Such as 14:30, in an hour, tomorrow at 9; Enter if not known");
    while (!when.isEmpty()) {
      Optional<Due.When> due = due(when);
      if (due.isPresent()) {
        sitting.record(sent(level, who, due));
        return due;
      }
      when = told("No time could be found in that. By when? Or press Enter");
    }
    return Optional.empty();
  }

  /** Ends the call; the person who goes continues the case. */
  void leave() {
    throw new DispatchedException();
  }

  /** A line of words; Enter and 0 give none. */
  private String told(String prompt) {
    String line = sitting.line(prompt).strip();
    return line.equals("0") ? "" : line;
  }
}
