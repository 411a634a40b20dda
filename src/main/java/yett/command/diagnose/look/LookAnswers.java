package yett.command.diagnose.look;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yett.command.common.CannotTellWords;
import yett.command.common.HeardAnswer;
import yett.command.common.Words;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.AboutAsked;
import yett.interview.event.Answer;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.saying.Negation;
import yett.wording.Wording;

/** Asks, one after the other, what each look of a round that is out of the ordinary shows. */
record LookAnswers(Sitting sitting, PromptRequests wishes, RoundViews views) {
  /**
   * Asks for the outcomes that are still missing; false if a request led elsewhere.
   *
   * @param said the answers are added here
   */
  boolean complete(Moment moment, List<Check> looks, LooksSaid said) {
    for (int i = 0; i < looks.size(); i++) {
      Check check = looks.get(i);
      Optional<Answer> answer = said.answer(i);
      if (answer.isEmpty() && said.words(i).isPresent()) {
        answer = byWords(i + 1, check, said.words(i).get());
      } else if (answer.isEmpty() && said.isTicked(i)) {
        answer = said.isUnread(i) ? answer : other(check);
      } else if (answer.isEmpty()) {
        answer = ordinary(moment, check);
      }
      while (answer.isEmpty() || !new RareAnswer(sitting).isMeant(moment, check, answer.get())) {
        answer = outcome(moment, looks, i, said);
        if (answer.isEmpty()) {
          return false;
        }
      }
      said.put(i, answer.get());
    }
    return true;
  }

  /** Asks whether words that are none of the answers mean the likeliest of them. */
  private Optional<Answer> byWords(int number, Check check, String words) {
    String kept = number + ": " + Words.quoted(words) + " is kept as a remark.";
    Optional<String> meant = meant(check, words);
    if (meant.isEmpty()) {
      sitting.say(kept + " Which is it?");
      return Optional.empty();
    }
    String shown = check.ask() + " " + Wording.capital(Wording.meaning(check, meant.get())) + ".";
    sitting.say(kept);
    return new Choices(sitting).confirm(List.of(meant.get()), id -> shown).map(Answer.Chosen::new);
  }

  /**
   * The outcome out of the ordinary that words about a look may mean: by their meaning, else the
   * only one, unless the words deny what it says.
   */
  private Optional<String> meant(Check check, String words) {
    Optional<String> byMeaning =
        new AboutAsked(sitting).outcome(check, words).filter(id -> check.indexOf(id) > 0);
    boolean denied = Negation.in(words) && !Negation.in(check.outcomes().get(1).text());
    return byMeaning.or(() -> denied ? Optional.empty() : other(check).flatMap(Answer::choice));
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
    List<String> letters = LookTicks.letters(check, line);
    return letters.isEmpty()
        ? HeardAnswer.lettered(check, line)
        : HeardAnswer.together(check, letters);
  }

  /** The letters and words of the answers to a look. */
  static String lettered(Check check) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < check.outcomes().size(); i++) {
      all.append(i == 0 ? "" : "; ")
          .append(Words.letter(i))
          .append(' ')
          .append(check.outcomes().get(i).text());
    }
    return all.append('.').toString();
  }

  /** Nobody numbers a look to say in other words that it is as usual; that is asked. */
  static boolean isOrdinary(Check check, Answer answer) {
    return answer.choice().filter(id -> check.indexOf(id) == 0).isPresent();
  }

  /** Whether an answer says all that was typed. */
  static boolean isWhole(Check check, Optional<Answer> answer, String text) {
    String all =
        answer.stream()
            .flatMap(a -> a.choices().stream())
            .map(id -> id + " " + check.outcomes().get(check.indexOf(id)).text())
            .collect(Collectors.joining(" and ", "", check.several() ? " and" : ""))
            .toLowerCase(Locale.ROOT);
    return answer.isPresent() && Arrays.stream(text.split("\\W+")).allMatch(all::contains);
  }

  /** Takes back what was typed in this round, and says what that was. */
  void takeBack(List<Check> looks, LooksSaid said) {
    Map<Integer, Optional<Answer>> typed = new TreeMap<>(said.answers());
    typed.keySet().retainAll(said.named());
    String what = views.soFar(looks, typed);
    said.takeBack();
    sitting.say(
        (what.isEmpty() ? "Nothing of this round is stored." : "Taken back: " + what + ".")
            + " What was named is asked again.");
  }

  /** Asks for the outcome of one look; empty if a request led elsewhere. */
  private Optional<Answer> outcome(Moment moment, List<Check> looks, int position, LooksSaid said) {
    Check check = looks.get(position);
    sitting.show(views.outcomes(check));
    while (true) {
      String line = sitting.line("Answer");
      Optional<Answer> untold = CannotTellWords.answer(line);
      if (untold.isPresent()) {
        return untold;
      }
      if (Words.isBack(line)) {
        said.leaveOpen(position);
        takeBack(looks, said);
        return Optional.empty();
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
