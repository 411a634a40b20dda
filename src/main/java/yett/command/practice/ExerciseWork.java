package yett.command.practice;

import java.util.List;
import java.util.Optional;
import yett.command.common.Prompt;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.console.Block;
import yett.console.Console;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.practice.Refusal;
import yett.practice.Workbench;

/** Carries out what a trainee does to the gate of an exercise. */
final class ExerciseWork {
  private final Console console;
  private final Workbench bench;
  private final RuleBase base;
  private final LabelledCards labels;
  private final PracticeViews views;
  private Optional<Check> last = Optional.empty();

  ExerciseWork(
      Console console, Workbench bench, RuleBase base, LabelledCards labels, PracticeViews views) {
    this.console = console;
    this.bench = bench;
    this.base = base;
    this.labels = labels;
    this.views = views;
  }

  /** The last check that was made. */
  Optional<Check> last() {
    return last;
  }

  void take(LabelledCards.Thing thing) {
    if (thing.card() instanceof Check check) {
      check(check);
    } else if (thing.card() instanceof Repair repair) {
      repair(repair);
    } else {
      setUp((SetUp) thing.card());
    }
  }

  /** A line that the trainee types. "save" works at every prompt. */
  String line(String prompt) {
    return Prompt.withLeave(console)
        .line(prompt + "> ", List.of())
        .orElseThrow(CaseLeftException::new);
  }

  /** Whether there is a refusal; its reason is shown. */
  private boolean isRefused(Optional<Refusal> refusal) {
    refusal.ifPresent(r -> console.show(new RefusalViews().refusal(r, labels.all())));
    return refusal.isPresent();
  }

  void dangers() {
    if (!(bench.moment().step() instanceof Step.AskDangers)) {
      console.say("You have looked already.");
      return;
    }
    bench.lookForDangers();
    if (bench.moment().judgement().stops().isEmpty()) {
      console.say("You look from two metres away and touch nothing: no danger to people.");
    }
  }

  void makeSafe(Step.MakeSafe stop) {
    console.show(views.steps().stop(stop));
    while (!line("\"done\" when it is done").equalsIgnoreCase("done")) {
      console.say("People first. Type done when these steps are done, or save to stop here.");
    }
    bench.madeSafe(stop);
  }

  private void check(Check check) {
    if (isRefused(bench.refused(check))) {
      return;
    }
    console.show(views.cautions().written(base.cautionsFor(check.hazards())));
    Answer answer = bench.ask(check);
    last = Optional.of(check);
    console.show(views.shown(check, answer));
  }

  private void repair(Repair repair) {
    if (isRefused(bench.refused(repair))) {
      return;
    }
    console.show(
        views
            .steps()
            .mend(
                new Step.Mend(
                    repair,
                    base.cautionsFor(repair.hazards()),
                    Optional.empty(),
                    Occasion.of(Occasion.Kind.WORTH)),
                bench.moment()));
    if (line("\"done\" to do it, Enter to leave it").equalsIgnoreCase("done")) {
      bench.repair(repair);
      console.say("Done. Whether it helped shows when the gate is tried.");
    } else {
      console.say("Left as it is.");
    }
  }

  private void setUp(SetUp setUp) {
    if (bench.moment().state().work().setUps().contains(setUp.id())) {
      console.show(views.steps().leave(new Step.Leave(setUp, Purpose.of(Purpose.Kind.OPEN))));
      console.show(Block.numbered(setUp.leave()));
      if (done()) {
        bench.leave(setUp);
      }
      return;
    }
    if (isRefused(bench.refused(setUp))) {
      return;
    }
    console.show(
        views
            .steps()
            .entering(
                new Step.Enter(
                    setUp, base.cautionsFor(setUp.hazards()), Purpose.of(Purpose.Kind.OPEN))));
    line("Press Enter when you have read the cautions");
    console.show(Block.numbered(setUp.enter()));
    if (done()) {
      bench.enter(setUp);
    }
  }

  private boolean done() {
    boolean done = line("\"done\" when all is done, in order; Enter to leave it").equals("done");
    if (!done) {
      console.say("Left as it was.");
    }
    return done;
  }

  void tryOut() {
    if (!isRefused(bench.tryRefused())) {
      Event.Retested tried = bench.tryOut();
      console.say(tried.cured() ? "It runs as it should." : "It " + tried.words() + ".");
    }
  }

  void finish() {
    if (!isRefused(bench.finishRefused())) {
      bench.finish();
    }
  }

  void handOver() {
    if (!isRefused(bench.handOverRefused())
        && line("\"yes\" ends the exercise here, Enter goes on").equalsIgnoreCase("yes")) {
      bench.close(Ending.HANDED_OVER);
    }
  }
}
