package yett.command.diagnose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.interview.Event;
import yett.interview.Step;

/**
 * Set-ups entered and left: the cautions first, then the steps to confirm. What somebody has done
 * before at this gate comes without a page of cautions the second time, its steps in one paragraph:
 * whole, because what protects stands at their ends as often as at their heads.
 */
final class SetUpScreens {
  private final Sitting sitting;
  private final Questions questions;

  /** Names of lists of steps that were confirmed in this sitting. */
  private final Set<String> done = new HashSet<>();

  SetUpScreens(Sitting sitting, Questions questions) {
    this.sitting = sitting;
    this.questions = questions;
  }

  /** The cautions first, by themselves, so that they are read; then the steps. */
  void enter(Step.Enter step) {
    String key = "enter " + step.setUp().id();
    if (!done.contains(key)) {
      sitting.screen(sitting.views().entering(step));
      OptionalInt read =
          questions.word(
              "Press Enter when you have read these",
              List.of(""),
              "Press Enter once you have read the cautions; save stops here.");
      if (read.isEmpty()) {
        return;
      }
      steps(key, List.of(), step.setUp().enter(), step.done());
    } else {
      again(sitting.views().entering(step), inForce(""), step.setUp().enter(), step.done());
    }
  }

  /** What is left is no longer in force. */
  void leave(Step.Leave step) {
    String key = "leave " + step.setUp().id();
    List<Block> what = sitting.views().leave(step);
    if (done.contains(key)) {
      again(what, inForce(step.setUp().id()), step.setUp().leave(), step.done());
    } else {
      steps(key, what, step.setUp().leave(), step.done());
    }
  }

  private void steps(String key, List<Block> what, List<String> steps, Event event) {
    List<Block> screen = new ArrayList<>(what);
    screen.add(Block.numbered(steps));
    sitting.screen(screen);
    if (confirm(steps, false, event)) {
      done.add(key);
    }
  }

  /** One screen with what it is for, so that a window that is too small has it in pages. */
  private void again(List<Block> what, Optional<String> inForce, List<String> steps, Event event) {
    List<Block> screen = new ArrayList<>(what);
    inForce.ifPresent(names -> screen.add(Block.rows(Block.row("Still in force", names))));
    screen.add(Block.rows(Block.row("As before", String.join(" ", steps))));
    sitting.screen(screen);
    confirm(steps, true, event);
  }

  private Optional<String> inForce(String left) {
    String names =
        sitting.moment().state().work().setUps().stream()
            .filter(id -> !id.equals(left))
            .map(id -> sitting.base().setUps().get(id).name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining("; "));
    return names.isEmpty() ? Optional.empty() : Optional.of(names);
  }

  /** Steps to confirm: all at once with "done", because each was read in its order. */
  private boolean confirm(List<String> steps, boolean again, Event event) {
    String prompt =
        (steps.size() == 1
                ? "\"done\" when it is done"
                : "\"done\" when all " + steps.size() + " steps are done, in order")
            + (again ? ", ? for them in full" : "");
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
      sitting.show(Block.numbered(steps));
    }
  }
}
