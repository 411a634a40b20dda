package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.Words;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Choices;
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
  private static final Pattern NO_OR_YES =
      Pattern.compile(
          "(?<first>no|nope|nah|yes)(?:[,.;!:]\\s*|\\s+(?=it|they|he|she|we|i|the|there)\\b)(?<more>.+)",
          Pattern.CASE_INSENSITIVE);

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
    if (line.equalsIgnoreCase("d")) {
      return Optional.of(new Answer.CannotTell());
    }
    if (line.equalsIgnoreCase("g")) {
      return Optional.of(new Answer.NotNow());
    }
    if (Words.wish(line).isPresent()) {
      return CannotTellWords.answer(line);
    }
    Optional<Answer> plain = plain(check, line);
    return plain.isPresent() || wishes.volunteered().isElsewhere(check, line)
        ? plain
        : HeardAnswer.to(check, line).answer();
  }

  /**
   * What a "no" or "yes" before other words means, if one answer of the question begins so: "no,
   * they look clean". It is read back, and the words are kept. Words of a danger are none.
   */
  private Optional<Answer> plain(Check check, String line) {
    Matcher said = NO_OR_YES.matcher(line);
    if (!said.matches() || wishes.volunteered().isDanger(said.group("more"))) {
      return Optional.empty();
    }
    String first = said.group("first").equalsIgnoreCase("yes") ? "yes" : "no";
    List<Check.Outcome> alike =
        check.outcomes().stream().filter(o -> o.text().matches(first + "(?:,.*)?")).toList();
    if (alike.size() != 1) {
      return Optional.empty();
    }
    Check.Outcome meant = alike.get(0);
    Optional<Answer> answer =
        new Choices(sitting)
            .confirm(List.of(meant), o -> Wording.capital(o.text()) + ".")
            .map(o -> new Answer.Chosen(o.id()));
    answer.ifPresent(a -> wishes.volunteered().keep(line));
    return answer;
  }
}
