package yett.command.diagnose.question;

import java.util.List;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Role;

/**
 * Handles a step whose question nobody can answer. For some lists, that is stored as the answer.
 */
record NobodyKnows(Sitting sitting) implements SomeSteps<Runnable> {

  /** On a call the fault may be none of the list; whoever is sent looks for it. */
  @Override
  public Runnable askComplaints(Step.AskComplaints step) {
    return sitting.moment().state().role() == Role.CALLER
        ? kept("Nobody could say which complaint it is.", new Event.Complained(List.of()))
        : other(step);
  }

  @Override
  public Runnable askPressing(Step.AskPressing step) {
    return kept(Event.Noted.URGENCY_UNTOLD, new Event.Pressed(List.of()));
  }

  @Override
  public Runnable askHistory(Step.AskHistory step) {
    return kept("Nobody could say what happened lately.", new Event.Happened(List.of()));
  }

  @Override
  public Runnable askDangers(Step.AskDangers step) {
    return () ->
        sitting.say(
            "Dangers cannot be left out. Type unknown 2 if you cannot tell about number 2,"
                + " unknown all if nobody sees the gate, the numbers that apply, or 0 only if none"
                + " does.");
  }

  @Override
  public Runnable makeSafe(Step.MakeSafe step) {
    return () -> sitting.say("People first: read these steps out all the same, then type done.");
  }

  @Override
  public Runnable other(Step step) {
    return () -> sitting.say(PromptRequests.STAYS);
  }

  private Runnable kept(String note, Event event) {
    return () -> sitting.record(new Event.Noted(note), event);
  }
}
