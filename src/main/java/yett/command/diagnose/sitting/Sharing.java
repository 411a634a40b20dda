package yett.command.diagnose.sitting;

import java.util.ArrayList;
import java.util.List;
import yett.command.common.Prompt;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.EntryOutcome;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.intake.Meanwhile;
import yett.interview.state.Somebody;
import yett.knowledge.Check;
import yett.wording.Wording;

/** Tells a person what others do to a shared casebook at the same time. */
public final class Sharing {
  private final Sitting sitting;
  private final Wording wording;

  public Sharing(Sitting sitting) {
    this.sitting = sitting;
    this.wording = new Wording(sitting.base());
  }

  /** Says what happened to an entry, unless it was simply stored. */
  public void tell(EntryOutcome recorded) {
    if (recorded.delivered() > 0) {
      sitting.say("The shared casebook is back; " + answers(recorded.delivered()) + " delivered.");
    }
    if (!recorded.theirs().isEmpty()) {
      others(recorded);
    }
    recorded.clashes().forEach(this::settle);
    if (recorded.unclosed()) {
      sitting.say("The case is still open: look at what they entered, and close it again.");
    }
    if (recorded.lost().isPresent()) {
      sitting.show(
          Block.signal(
              SignalWord.NOTICE,
              "The shared casebook cannot be reached. "
                  + recorded.lost().get()
                  + " Carry on: your answers are kept on this computer and delivered when the"
                  + " casebook is back."));
    } else if (recorded.waiting() > 0) {
      sitting.say(
          "Kept on this computer: " + answers(recorded.waiting()) + " waiting for the casebook.");
    }
  }

  private static String answers(int entries) {
    return entries == 1 ? "1 entry is" : entries + " entries are";
  }

  private void others(EntryOutcome recorded) {
    List<String> theirs = new ArrayList<>();
    for (Entry entry : recorded.theirs()) {
      String who = Somebody.who(entry, sitting.moment().entries()).words();
      theirs.add(Wording.capital(who) + ": " + wording.event(entry.event()));
    }
    boolean all = recorded.added().stream().noneMatch(e -> e.event() instanceof Event.Noted);
    sitting.show(
        Block.signal(
            SignalWord.NOTICE,
            "Somebody else has worked on this case in the meantime. What they entered:"));
    sitting.show(Block.numbered(theirs));
    sitting.say(
        recorded.added().isEmpty()
            ? "What you entered says the same. Go on from here."
            : all
                ? "What you entered follows it. Go on from here."
                : "What you entered follows it; what no longer fits is kept as a note. Go on"
                    + " from here.");
    if (recorded.added().stream().anyMatch(e -> e.event() instanceof Event.TakenUp)) {
      sitting.say("They had closed the case. You report a danger, so it is open again.");
    }
    if (recorded.added().stream().anyMatch(e -> e.event() instanceof Event.Returned)) {
      sitting.say(
          "Both of you changed something at the gate: look for dangers again, and go through every"
              + " state in force again.");
    }
  }

  /**
   * Asks what to do where both answered the same check. The other person's answer stays unless this
   * person changes it.
   */
  private void settle(Meanwhile.Clash clash) {
    Check check = sitting.base().checks().get(clash.check());
    if (check == null) {
      return;
    }
    sitting.show(
        Block.heading("Two answers to one question"),
        Block.paragraph(check.ask()),
        Block.numbered(
            List.of(
                "theirs: " + wording.answer(clash.check(), clash.theirs()),
                "yours: " + wording.answer(clash.check(), clash.mine()))));
    if (asksForMine()) {
      sitting.record(new Event.Corrected(clash.event(), clash.mine()));
      sitting.show(sitting.taken(sitting.moment(), check));
    }
  }

  private boolean asksForMine() {
    return sitting.until(
        "Which is right? 1 or 2; look again if you can",
        line ->
            Prompt.word(line, List.of("1", "theirs", "2", "yours", "mine"))
                .map(i -> Prompt.Reading.of(i > 1))
                .orElse(
                    Prompt.Reading.again(
                        "Type 1 for theirs, 2 for yours. Both are in the record, whichever"
                            + " counts.")));
  }

  /** Whether this answer to a check is the one that counts now. */
  public static boolean counts(Sitting sitting, Check check, Answer answer) {
    return sitting
        .moment()
        .state()
        .latest(check.id())
        .filter(a -> a.answer().equals(answer))
        .isPresent();
  }
}
