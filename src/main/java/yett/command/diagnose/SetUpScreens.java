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
    sitting.screen(sitting.views().entering(step));
    if (!done.contains(key)) {
      OptionalInt read =
          questions.word(
              "Enter when these are read",
              List.of(""),
              "Press Enter once you have read the cautions; save stops here.");
      if (read.isEmpty()) {
        return;
      }
    }
    steps(key, step.setUp().enter(), step.done());
  }

  void leave(Step.Leave step) {
    sitting.show(sitting.views().leave(step));
    steps("leave " + step.setUp().id(), step.setUp().leave(), step.done());
  }

  private void steps(String key, List<String> steps, Event event) {
    boolean again = done.contains(key);
    if (again) {
      List<Block.Row> rows = new ArrayList<>();
      inForce().ifPresent(names -> rows.add(Block.row("Still in force", names)));
      rows.add(Block.row("As before", String.join(" ", steps)));
      sitting.show(new Block.Rows(rows));
    } else {
      sitting.screen(List.of(Block.numbered(steps)));
    }
    if (confirm(steps, again, event)) {
      done.add(key);
    }
  }

  private Optional<String> inForce() {
    String names =
        sitting.moment().state().work().setUps().stream()
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
              "Type done when it is done; save stops here; hand over gives the case away.");
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
