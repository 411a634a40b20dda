package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.HeardAnswer;
import yett.command.common.Words;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.WorksAgain;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.wording.Wording;

/** Shows a question to read out, with the answers to choose from, and takes the answer. */
final class CallQuestion {
  private final Sitting sitting;
  private final PromptRequests wishes;
  private boolean keysTold;

  CallQuestion(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
  }

  /**
   * @param cautions read out before the question
   */
  void ask(Check check, List<Caution> cautions, Moment moment) {
    sitting.show(blocks(check, cautions, moment));
    while (sitting.moment() == moment) {
      String line = sitting.line(Words.prompt(check)).strip();
      Optional<Answer> answer = answer(check, line);
      if (answer.isEmpty()) {
        if (!wishes.grant(line) && !wishes.volunteered().hearAt(check, line)) {
          sitting.say(HeardAnswer.to(check, line).complaint());
        }
      } else if (new RareAnswer(sitting).isMeant(moment, check, answer.get())) {
        take(check, answer.get(), moment);
      }
    }
  }

  private List<Block> blocks(Check check, List<Caution> cautions, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Question " + sitting.questionNumber()));
    blocks.addAll(sitting.cautions().spoken(cautions));
    String more = check.several() ? " There may be more than one answer." : "";
    blocks.add(Block.paragraph(Text.of("Read out: ").and(Text.strong(check.spoken() + more))));
    if (!check.how().isEmpty()) {
      blocks.add(Block.rows(Block.row("How", check.how())));
    }
    blocks.add(
        Block.numbered(check.outcomes().stream().map(o -> Wording.capital(o.text())).toList()));
    if (!keysTold) {
      keysTold = true;
      blocks.add(
          Block.paragraph(
              Text.dim("d: they don't know · g: they can't get there · x: the call dropped")));
    }
    return blocks;
  }

  private void take(Check check, Answer answer, Moment moment) {
    sitting.record(new Event.Answered(check.id(), answer));
    sitting.moment().judgement().remarks().stream()
        .filter(r -> !moment.judgement().remarks().contains(r))
        .forEach(r -> sitting.say("Note: " + r.text()));
    if (answer.choice().filter(o -> new WorksAgain(sitting).isIt(check, o)).isPresent()) {
      wishes.end().worksAgain(Optional.empty());
    }
  }

  private Optional<Answer> answer(Check check, String line) {
    Optional<Words.Wish> wish = Words.wish(line);
    if (line.equalsIgnoreCase("d") || wish.equals(Optional.of(Words.Wish.UNKNOWN))) {
      return Optional.of(new Answer.CannotTell());
    }
    if (line.equalsIgnoreCase("g") || wish.equals(Optional.of(Words.Wish.LATER))) {
      return Optional.of(new Answer.NotNow());
    }
    return wish.isPresent() || wishes.volunteered().isElsewhere(check, line)
        ? Optional.empty()
        : HeardAnswer.to(check, line).answer();
  }
}
