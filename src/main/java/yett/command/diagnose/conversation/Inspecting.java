package yett.command.diagnose.conversation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.Words;
import yett.command.diagnose.look.InspectionRounds;
import yett.command.diagnose.look.LookList;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.screen.FindingsViews;
import yett.command.diagnose.screen.InspectionViews;
import yett.command.diagnose.sitting.Sharing;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.wording.StepWords;

/** Handles the steps of an inspection. */
final class Inspecting {
  private static final String REMARK = "remark ";

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final Questions questions;
  private final LookList looks;
  private final InspectionViews views;

  Inspecting(Sitting sitting, PromptRequests wishes, Questions questions) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.questions = questions;
    this.views = new InspectionViews(sitting.base(), sitting.cautions());
    this.looks = new LookList(sitting, wishes, new InspectionRounds(sitting, views));
  }

  /** Handles the steps of an inspection itself and passes all others on. */
  Step.Visitor<Runnable> of(Step.Visitor<Runnable> otherwise) {
    return new Turn(otherwise);
  }

  private final class Turn implements SomeSteps<Runnable> {
    private final Step.Visitor<Runnable> otherwise;

    Turn(Step.Visitor<Runnable> otherwise) {
      this.otherwise = otherwise;
    }

    @Override
    public Runnable other(Step step) {
      return step.accept(otherwise);
    }

    @Override
    public Runnable lookRound(Step.LookRound step) {
      return looks.asksSingly(step) ? ask(step.first()) : () -> looks.ask(step);
    }

    @Override
    public Runnable ask(Step.Ask step) {
      return () -> answer(step, sitting.moment());
    }

    @Override
    public Runnable closeRepaired(Step.CloseRepaired step) {
      return () -> closeInspected(step);
    }

    @Override
    public Runnable handOver(Step.HandOver step) {
      boolean ours = !step.staysOpen() && step.ending() != Ending.MADE_SAFE;
      return ours ? () -> leaveOutOfUse(step) : other(step);
    }
  }

  private void answer(Step.Ask step, Moment moment) {
    Check check = step.check();
    sitting.show(views.ask(step, moment));
    List<Event> events = new ArrayList<>();
    while (true) {
      String line = sitting.line(Words.prompt(check));
      if (line.strip().startsWith(REMARK)) {
        events.add(
            new Event.Noted(
                line.strip().substring(REMARK.length()).strip(), Optional.of(check.id())));
        sitting.say("Kept as a remark. And the answer?");
        continue;
      }
      Optional<Answer> answer = questions.answer(check, line);
      if (answer.isPresent()) {
        events.add(new Event.Answered(check.id(), answer.get()));
        sitting.record(events.toArray(Event[]::new));
        if (Sharing.counts(sitting, check, answer.get())) {
          sitting.show(views.taken(sitting.moment(), List.of(check.id())));
        }
        return;
      }
      if (sitting.onlyForcesSince(moment)) {
        continue;
      }
      if (sitting.moment() != moment) {
        if (!events.isEmpty()) {
          sitting.record(events.toArray(Event[]::new)); // said before something else was told
        }
        return;
      }
    }
  }

  private void closeInspected(Step.CloseRepaired step) {
    List<Block> blocks = new ArrayList<>(new FindingsViews(sitting.base()).of(sitting.moment()));
    blocks.add(
        Block.paragraph("Every proof that this gate needs passed: it may be used." + CaseEnd.LAST));
    blocks.add(Block.numbered(step.last()));
    sitting.screen(blocks);
    close(step.ending());
  }

  private void leaveOutOfUse(Step.HandOver step) {
    List<Block> blocks = new ArrayList<>(new FindingsViews(sitting.base()).of(sitting.moment()));
    String why = StepWords.because(step.because());
    blocks.add(
        Block.paragraph("The gate stays out of use: " + why + (why.endsWith("?") ? "" : ".")));
    sitting.screen(blocks);
    close(step.ending());
  }

  private void close(Ending ending) {
    if (questions.close("inspection", ending)) {
      sitting.say("Closed. The sheet: record " + sitting.open().id() + ".");
    }
  }
}
