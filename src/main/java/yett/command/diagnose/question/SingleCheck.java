package yett.command.diagnose.question;

import java.util.Optional;
import yett.command.common.Words;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.correction.Disagreement;
import yett.command.diagnose.sitting.Sharing;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;

/** Asks a single check or proof until it is answered. */
public record SingleCheck(Sitting sitting, Questions questions) {
  /** Asks it; returns once it is answered, or once a request leads to another step. */
  public void ask(Step.Ask step, Moment moment) {
    Check check = step.check();
    sitting.screen(sitting.views().ask(step, moment, sitting.questionNumber()));
    while (true) {
      String line = sitting.line(Words.prompt(check));
      Optional<Answer> answer = questions.answer(check, line);
      if (answer.isEmpty()) {
        if (sitting.moment() != moment && !sitting.onlyForcesSince(moment)) {
          return;
        }
        continue;
      }
      if (new RareAnswer(sitting).isMeant(moment, check, answer.get())) {
        sitting.record(new Event.Answered(check.id(), answer.get()));
        if (Sharing.counts(sitting, check, answer.get())) {
          sitting.show(sitting.taken(moment, check));
          new Disagreement(sitting).ask(moment);
        }
        return;
      }
    }
  }
}
