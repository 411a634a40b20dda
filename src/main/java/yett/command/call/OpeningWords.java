package yett.command.call;

import java.util.List;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;

/** Takes down what a caller says before anything is asked, once for each call. */
final class OpeningWords {
  private final Sitting sitting;
  private final PromptRequests wishes;
  private final SaidSince since;
  private boolean asked;

  OpeningWords(Sitting sitting, PromptRequests wishes, SaidSince since) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.since = since;
  }

  /** Whether the call begins now, or somebody rings again. */
  boolean areDue(Moment moment) {
    return !asked && (since.isAnotherCall() || moment.state().told().said().isEmpty());
  }

  /** Keeps what was already said on this call, so that it is not asked for. */
  void take(List<Event> said) {
    if (!said.isEmpty()) {
      asked = true;
      sitting.record(said.toArray(Event[]::new));
    }
  }

  /**
   * Whoever rings again looks for dangers. If the first caller, on the line with another desk, was
   * asked about them just now, that is not this caller's answer.
   */
  private void lookAgain() {
    if (since.isAnotherCall() && !(sitting.moment().step() instanceof Step.AskDangers)) {
      sitting.record(new Event.DangersAgain());
    }
  }

  void ask() {
    sitting.ears().prepare(); // loads while the caller talks
    sitting.show(
        Block.heading("The call"),
        Block.paragraph("\"What is wrong with the gate?\" Type it as the caller says it."));
    while (true) {
      String words = sitting.line("In the caller's own words").strip();
      if (words.isEmpty() || !wishes.grant(words)) {
        asked = true;
        if (!words.isEmpty()) {
          sitting.record(new Event.Said(words));
          lookAgain();
        }
        return;
      }
    }
  }
}
