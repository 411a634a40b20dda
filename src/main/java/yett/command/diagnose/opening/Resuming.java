package yett.command.diagnose.opening;

import java.util.Map;
import yett.casebook.CaseId;
import yett.command.common.ClockNotice;
import yett.command.diagnose.conversation.Conversation;
import yett.command.diagnose.correction.Corrections;
import yett.command.diagnose.question.CallLead;
import yett.command.diagnose.screen.UnusableEvents;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Role;

/** Goes on with a case that was left, whatever interrupted it. */
public record Resuming(Desk desk, Console console, CallLead.Maker calls) {
  /** Opens the case and leads through the rest of it; of a closed one, says how it ended. */
  public void goOn(CaseId id, Role role) {
    try (OpenCase open = desk.open(id, role)) {
      open.nameIt(); // a program that was killed may have stored an answer and not said so
      var state = open.moment().state();
      String gate = state.opened().map(Event.Opened::site).orElse("");
      console.show(Block.heading("Case " + id + " · " + gate + " · " + WhoAnswers.words(role)));
      if (state.closed().filter(Ending::isDone).isPresent()) {
        console.say(
            "This case is closed: "
                + state.closed().get().words()
                + ". Its record: record "
                + id
                + ".");
        new AfterInspection(desk, console, calls).offer(open);
        return;
      }
      if (state.isInspection() && state.closed().isPresent()) {
        console.say(
            "This inspection is closed: "
                + state.closed().get().words()
                + ". The gate may be used once it has passed every proof, in a case or in"
                + " another inspection.");
        new AfterInspection(desk, console, calls).offer(open);
        return;
      }
      console.show(new ResumeViews(desk.base()).left(open.moment()));
      if (state.closed().isPresent()) {
        takeUp(open, "was closed: " + state.closed().get().words(), new Event.TakenUp());
      } else if (open.moment().step() instanceof Step.HandOver h && h.staysOpen()) {
        takeUp(open, "was left open for an inquiry", new Event.Returned());
      }
      told(open);
      new Conversation(console, open, Map.of(), calls).comesBack().run();
      new AfterInspection(desk, console, calls).offer(open);
    }
  }

  /**
   * The same for an open inspection that somebody meant to begin; dangers are always asked about.
   */
  void goOnInspecting(CaseId id, Role role) {
    try (OpenCase open = desk.open(id, role)) {
      open.nameIt();
      console.show(
          Block.heading("Inspection " + id + " · " + open.gate() + " · " + WhoAnswers.words(role)));
      told(open);
      new Conversation(console, open, Map.of(), calls).comesBackAndLooksAgain().run();
      new AfterInspection(desk, console, calls).offer(open);
    }
  }

  /** What has to be known before the work goes on. */
  private void told(OpenCase open) {
    ResumeViews views = new ResumeViews(desk.base());
    boolean sameRules =
        open.moment()
            .state()
            .opened()
            .map(o -> o.ruleBase().equals(desk.expertise().base().fingerprint()))
            .orElse(true);
    if (!sameRules) {
      console.say("The rule base has changed since; the answers were weighed again.");
    }
    ClockNotice.show(desk, console);
    console.show(new UnusableEvents(desk.base()).blocks(open.moment()));
    console.say(views.summary(open));
    if (open.role() != Role.CALLER) {
      console.show(views.told(open, new Corrections(new Sitting(console, open))));
    }
  }

  /**
   * Continues a case that was handed over or left: dangers are asked about first, then the state of
   * the gate.
   */
  private void takeUp(OpenCase open, String left, Event how) {
    console.say(
        "This case "
            + left
            + ". It is taken up again from where it was left; look for dangers first, then"
            + " check that the gate is as it was left.");
    open.record(how);
  }
}
