package yett.command.diagnose.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.screen.CautionViews;
import yett.command.diagnose.screen.StillInForce;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Caution;
import yett.knowledge.SetUp;

/**
 * Shows set-ups being entered and left: the cautions first, then the steps to confirm. If somebody
 * has already done the same steps at this gate, the page of cautions is left out and each step is
 * one short line, which its card words. The steps in full come on request.
 */
public final class SetUpScreens {
  private final Sitting sitting;
  private final Questions questions;

  /** Names of lists of steps that were confirmed in this sitting. */
  private final Set<String> done = new HashSet<>();

  public SetUpScreens(Sitting sitting, Questions questions) {
    this.sitting = sitting;
    this.questions = questions;
  }

  /** Shows the cautions on their own, so that they are read, and then the steps. */
  public void enter(Step.Enter step) {
    String key = "enter " + step.setUp().id();
    if (!done.contains(key)) {
      List<Block> screen = new ArrayList<>(sitting.views().entering(step));
      beside(step).ifPresent(screen::add);
      sitting.screen(screen);
      OptionalInt read =
          questions.word(
              "Press Enter when you have read the cautions",
              List.of(""),
              "Press Enter to go on once you have read them; save stops here.");
      if (read.isEmpty()) {
        return;
      }
      sitting.cautions().read();
      steps(key, List.of(), step.setUp().enter(), step.done());
    } else {
      SetUp setUp = step.setUp();
      showBriefly(
          sitting.views().entering(step),
          beside(step),
          setUp.enterAgain(),
          full(step.cautions(), setUp.enter()),
          step.done());
    }
  }

  /** Shows the steps by which a set-up is left; after that it is no longer in force. */
  public void leave(Step.Leave step) {
    String key = "leave " + step.setUp().id();
    List<Block> what = sitting.views().leave(step);
    Optional<Block> inForce = inForce(List.of(step.setUp().id()));
    if (done.contains(key)) {
      SetUp setUp = step.setUp();
      showBriefly(what, inForce, setUp.leaveAgain(), full(List.of(), setUp.leave()), step.done());
    } else {
      List<Block> screen = new ArrayList<>(what);
      inForce.ifPresent(screen::add);
      steps(key, screen, step.setUp().leave(), step.done());
    }
  }

  private void steps(String key, List<Block> what, List<String> steps, Event event) {
    List<Block> screen = new ArrayList<>(what);
    screen.add(Block.numbered(steps));
    sitting.screen(screen);
    if (confirm(steps.size(), List.of(), event)) {
      done.add(key);
    }
  }

  /** Shows steps that were done before in a few words each, with what is still in force. */
  private void showBriefly(
      List<Block> what,
      Optional<Block> inForce,
      List<String> briefly,
      List<Block> full,
      Event event) {
    List<Block> screen = new ArrayList<>(what);
    inForce.ifPresent(screen::add);
    screen.add(Block.paragraph("As before:"));
    screen.add(Block.numbered(briefly));
    sitting.screen(screen);
    confirm(briefly.size(), full, event);
  }

  private static List<Block> full(List<Caution> cautions, List<String> steps) {
    List<Block> blocks = new ArrayList<>(CautionViews.full(cautions));
    blocks.add(Block.numbered(steps));
    return blocks;
  }

  private Optional<Block> beside(Step.Enter step) {
    return inForce(
        step.again()
            ? List.copyOf(sitting.moment().state().work().unseen()) // being gone through
            : step.instead());
  }

  /**
   * @param left set-ups that this step ends
   */
  private Optional<Block> inForce(List<String> left) {
    return new StillInForce(sitting.base()).beside(sitting.moment(), left);
  }

  /**
   * Asks for confirmation of all steps at once with "done", as each was read in its order.
   *
   * @param full what "?" shows if only a short form was shown; else empty
   */
  private boolean confirm(int steps, List<Block> full, Event event) {
    boolean again = !full.isEmpty();
    String prompt =
        (steps == 1
                ? "\"done\" when it is done"
                : again
                    ? "\"done\" when all is done, in order"
                    : "\"done\" when all " + steps + " steps are done, in order")
            + (again ? ", ? for the steps in full" : "");
    while (true) {
      OptionalInt word =
          questions.word(
              prompt,
              again ? List.of("done", "?") : List.of("done"),
              "Type done when it is done; save stops here; hand over passes the case on.");
      if (word.isEmpty()) {
        return false;
      }
      if (word.getAsInt() == 0) {
        sitting.record(event);
        return true;
      }
      sitting.show(full);
    }
  }
}
