package yett.command.diagnose;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.Words;
import yett.interview.Answer;
import yett.interview.Moment;
import yett.knowledge.Check;

/** Asks, one after the other, what each look of a round that is out of the ordinary shows. */
record LookAnswers(Sitting sitting, PromptRequests wishes, RoundViews views) {
  /**
   * Asks for the outcomes that are still missing; false if a request led elsewhere.
   *
   * @param said by position of the look; empty where the look is out of the ordinary and its
   *     outcome is not known yet. The answers are added here
   * @param besides words about a look, which become remarks; where the look is out of the ordinary
   *     they match none of its answers, or several
   */
  boolean complete(
      Moment moment,
      List<Check> looks,
      Map<Integer, Optional<Answer>> said,
      Map<Integer, String> besides) {
    for (int i = 0; i < looks.size(); i++) {
      Check check = looks.get(i);
      Optional<Answer> answer = said.getOrDefault(i, ordinary(moment, check));
      if (answer.isEmpty() && besides.containsKey(i)) {
        sitting.say(
            (i + 1) + ": " + Words.quoted(besides.get(i)) + " is kept as a remark. Which is it?");
      } else if (answer.isEmpty() && said.containsKey(i)) {
        answer = other(check);
      }
      while (answer.isEmpty() || !new RareAnswer(sitting).isMeant(moment, check, answer.get())) {
        answer = outcome(moment, check);
        if (answer.isEmpty()) {
          return false;
        }
      }
      said.put(i, answer);
    }
    return true;
  }

  /** The ordinary answer, where nothing was said and it may be taken for granted. */
  private static Optional<Answer> ordinary(Moment moment, Check check) {
    return RoundViews.isOrdinary(moment, check)
        ? Optional.of(new Answer.Chosen(check.outcomes().get(0).id()))
        : Optional.empty();
  }

  /** The only outcome that is out of the ordinary, if the look has just two. */
  private static Optional<Answer> other(Check check) {
    return check.outcomes().size() == 2
        ? Optional.of(new Answer.Chosen(check.outcomes().get(1).id()))
        : Optional.empty();
  }

  /** Reads the answer to one look by its letter or its words. */
  static HeardAnswer of(Check check, String text) {
    String line = text.strip().toLowerCase(Locale.ROOT);
    int index = line.matches("[a-z]") ? line.charAt(0) - 'a' : -1;
    return index >= 0 && index < check.outcomes().size()
        ? HeardAnswer.of(new Answer.Chosen(check.outcomes().get(index).id()))
        : HeardAnswer.lettered(check, line);
  }

  /** Asks for the outcome of one look; empty if a request led elsewhere. */
  private Optional<Answer> outcome(Moment moment, Check check) {
    sitting.show(views.outcomes(check));
    while (true) {
      String line = sitting.line("Answer");
      Optional<Answer> untold = CannotTellWords.answer(line);
      if (untold.isPresent()) {
        return untold;
      }
      if (wishes.grant(line)) {
        if (sitting.moment() != moment) {
          return Optional.empty();
        }
        continue;
      }
      HeardAnswer heard = of(check, line);
      if (heard.answer().isPresent()) {
        return heard.answer();
      }
      sitting.say(heard.complaint());
    }
  }
}
