package yett.command.diagnose.conversation;

import java.util.List;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Ending;
import yett.interview.step.Step;
import yett.knowledge.SetUp;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Ends a case: handed over, out of use, or with the gate back in service. */
record CaseEnd(Sitting sitting, Questions questions) {
  /** Put before the steps for giving the gate back. */
  static final String LAST = " Now hand it back, in this order:";

  void makeSafe(Step.MakeSafe step) {
    sitting.screen(sitting.views().stop(step));
    questions.madeSafe(step);
  }

  void handOver(Step.HandOver step) {
    sitting.show(
        Block.heading("Hand over"),
        Block.paragraph(Wording.capital(StepWords.because(step.because())) + "."));
    if (step.staysOpen()) {
      keepOpen();
      return;
    }
    if (step.ending() != Ending.MADE_SAFE) {
      sitting.show(sitting.beliefs().bars(sitting.moment(), 4));
      sitting
          .moment()
          .judgement()
          .whyForbidden(SetUp.GATE_RUNNING)
          .forEach(why -> sitting.say("Nobody runs the gate: " + why + "."));
    }
    sitting.say("The gate stays out of use until every proof has passed.");
    close(step.ending());
  }

  /**
   * Keeps the case open after an accident. Nobody looks for the fault until the person who leads
   * the inquiry allows it.
   */
  private void keepOpen() {
    sitting.say(
        "No fault-finding or repair is done here. Leave the gate as it is, apart from"
            + " what was done to free the injured person and to isolate it. The case stays open"
            + " for the inquiry; go on with it when the scene is released.");
    questions
        .word(
            "\"leave\" to leave it like this, or back",
            List.of("leave"),
            "Type leave, or back to take the last answer back.")
        .ifPresent(
            i -> {
              throw new CaseLeftException();
            });
  }

  void closeRepaired(Step.CloseRepaired step) {
    sitting.show(
        Block.heading("Back in service"),
        Block.paragraph(
            "The gate has passed every proof it needs."
                + (step.ending() == Ending.NOTHING_FOUND
                    ? " Nothing was found wrong with it, and nothing was repaired."
                    : "")
                + LAST),
        Block.numbered(step.last()));
    close(step.ending());
  }

  private void close(Ending ending) {
    if (!questions.close("case", ending)) {
      return;
    }
    if (sitting.moment().state().closed().isEmpty()) {
      return; // somebody else has continued it
    }
    String id = sitting.open().id().toString();
    String sheet =
        ending.isProved() ? "" : " The sheet for the next level: record " + id + " --hand-over.";
    sitting.say("Closed. The record: record " + id + "." + sheet);
  }
}
