package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.question.SolvedBefore;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.work.RetestList;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.interview.danger.SaidOver;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.step.Step;

/** Leads a caller through a repair step by step. */
record CallSteps(Sitting sitting, Questions questions, StepsDone done, ReadOut readOut) {
  /** The position of the last word that means that a step is done. */
  private static final int DONE = 4;

  void makeSafe(Step.MakeSafe step) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.rule());
    blocks.add(Block.signal(SignalWord.DANGER, step.stop().name() + "."));
    if (SaidOver.stops(sitting.moment(), sitting.base()).contains(step.stop().id())) {
      blocks.add(
          Block.paragraph(
              "They say that it is over. That is kept, but only somebody at the gate can end it;"
                  + " until then this holds."));
    }
    blocks.add(Block.paragraph(Text.strong("Read out, in this order:")));
    blocks.add(Block.numbered(step.now()));
    readOut.add(step.now());
    List<String> desk = new ArrayList<>();
    if (!new Callers(sitting).hasNumber()) {
      desk.add(
          "Ask where they are and for a number to ring back, before the line drops. Type it when you"
              + " are asked who calls.");
    }
    desk.addAll(sitting.base().telephone().desk().getOrDefault(step.stop().id(), List.of()));
    if (!desk.isEmpty()) {
      blocks.add(Block.paragraph(Text.strong("You at the desk:")));
      blocks.add(Block.numbered(desk));
    }
    sitting.show(blocks);
    done.ask(step);
  }

  /**
   * Gives one step at a time: the next one is read out when the caller says that the last one is
   * done.
   */
  void mend(Step.Mend step) {
    List<String> steps = step.repair().steps();
    sitting.show(Block.heading("What the caller can do: " + step.repair().name()));
    sitting.show(sitting.cautions().spoken(step.cautions()));
    for (int i = 0; i < steps.size(); i++) {
      sitting.show(
          Block.paragraph(
              Text.of("Step " + (i + 1) + " of " + steps.size() + ", read out: ")
                  .and(Text.strong(steps.get(i)))));
      OptionalInt done =
          questions.word(
              "Enter when it is done, \"g\" if they can't",
              List.of(
                  "",
                  "done",
                  "yes",
                  "ok",
                  "okay",
                  "g",
                  "d",
                  "cannot",
                  "not possible",
                  "unknown",
                  "later"),
              "Press Enter when it is done; g if they cannot or will not get there; x if the"
                  + " call dropped.");
      if (done.isEmpty()) {
        return;
      }
      if (done.getAsInt() > DONE) {
        sitting.record(new Event.Repaired(step.repair().id(), false));
        return;
      }
    }
    sitting.record(new Event.Repaired(step.repair().id(), true));
  }

  void retest() {
    new RetestList(sitting, questions)
        .ask(
            List.of(
                Block.heading("Does it run now?"),
                Block.paragraph(Text.of("Read out: ").and(Text.strong(RetestList.SEEN_OR_TRIED)))),
            " Type hand over if nobody can try it.");
  }

  void failedProof(Step.DecideFailedProof step) {
    sitting.say("Then something is still wrong.");
    sitting.record(new Event.Reopened(step.proof().id()));
  }

  void solved(Step.CloseSolved step) {
    if (new SolvedBefore(sitting.open()).sends(sitting)) {
      return;
    }
    List<String> watch = new ArrayList<>(step.watch());
    watch.add("Watch the next runs from the side, with nobody in the opening.");
    watch.add(
        "Call again at once if it does the same again, or anything new, or makes a new noise.");
    sitting.show(
        Block.heading("Solved on the telephone"),
        Block.paragraph(Text.strong("Read out:")),
        Block.numbered(watch));
    OptionalInt closed =
        questions.word(
            "\"close\" to close the case, or back",
            List.of("close"),
            "Type close, or back to take the last answer back.");
    if (closed.isPresent()) {
      sitting.record(new Event.Closed(Ending.SOLVED));
      sitting.say("Closed. The record: record " + sitting.open().id() + ".");
    }
  }
}
