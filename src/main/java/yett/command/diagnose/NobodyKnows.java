package yett.command.diagnose;

import java.util.List;
import yett.interview.Event;
import yett.interview.SomeSteps;
import yett.interview.Step;

/**
 * Handles a step whose question nobody can answer. For some lists, that is stored as the answer.
 */
record NobodyKnows(Sitting sitting) implements SomeSteps<Runnable> {

  @Override
  public Runnable askPressing(Step.AskPressing step) {
    return kept("How urgent it is nobody could tell.", new Event.Pressed(List.of()));
  }

  @Override
  public Runnable askHistory(Step.AskHistory step) {
    return kept("What happened lately nobody could tell.", new Event.Happened(List.of()));
  }

  @Override
  public Runnable askDangers(Step.AskDangers step) {
    return () ->
        sitting.say(
            "Dangers cannot be left out. Type unknown 2 if you cannot tell about the second, unknown"
                + " all if nobody sees the gate, the numbers that are so, or 0 only if none is.");
  }

  @Override
  public Runnable makeSafe(Step.MakeSafe step) {
    return () ->
        sitting.say("People first: say these steps all the same; done when they were said.");
  }

  @Override
  public Runnable other(Step step) {
    return () -> sitting.say(PromptRequests.STAYS);
  }

  private Runnable kept(String note, Event event) {
    return () -> sitting.record(new Event.Noted(note), event);
  }
}
