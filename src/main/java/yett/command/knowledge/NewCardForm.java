package yett.command.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.bench.Candidate;
import yett.bench.Draft;
import yett.bench.NewCard;
import yett.bench.Question;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;

/**
 * Asks at a terminal for what a new card needs. Every answer is stored at once. An answer that was
 * taken back, or that an earlier start left, is offered again when its question comes.
 */
public final class NewCardForm {
  /** Typed for the usual answer, mostly none, where Enter means something else. */
  private static final String NOTHING = "-";

  private final Console console;
  private final NewCard card;
  private final Draft draft;
  private final Map<String, String> given;
  private final AnswersSoFar answers = new AnswersSoFar();

  /**
   * @param given answers from the command line; they are not asked for if they are valid
   */
  public NewCardForm(Console console, NewCard card, Draft draft, Map<String, String> given) {
    this.console = console;
    this.card = card;
    this.draft = draft;
    this.given = new LinkedHashMap<>(given);
  }

  /** Answers to all questions; empty if the person stopped. */
  public Optional<Map<String, String>> fill() {
    console.say(
        "? lists what can be answered, ? WORD looks it up; back goes one question back; Ctrl-D stops"
            + " here and keeps the answers.");
    if (!draft.answers().isEmpty() && !resume()) {
      return Optional.empty();
    }
    return goOn();
  }

  /** Asks the last question again, after a problem was found. */
  public Optional<Map<String, String>> askAgain() {
    back();
    return goOn();
  }

  private Optional<Map<String, String>> goOn() {
    for (Optional<Question> next = next(); next.isPresent(); next = next()) {
      Question question = next.get();
      if (isGiven(question)) {
        answers.given(question, given.get(question.key()));
        question.told().apply(given.get(question.key())).forEach(console::say);
      } else if (!ask(question)) {
        return stopped();
      }
      draft.keep(answers.all());
    }
    return Optional.of(answers.all());
  }

  /** Whether the command line gives a valid answer. An invalid one is reported once. */
  private boolean isGiven(Question question) {
    Optional<String> complaint =
        Optional.ofNullable(given.get(question.key())).flatMap(question.complaint());
    complaint.ifPresent(console::say);
    complaint.ifPresent(c -> given.remove(question.key()));
    return given.containsKey(question.key());
  }

  private Optional<Map<String, String>> stopped() {
    console.say(
        answers.all().isEmpty()
            ? "Nothing was written."
            : "No card was written. Your answers are kept in "
                + draft.file()
                + "; the same command goes on with them.");
    return Optional.empty();
  }

  private Optional<Question> next() {
    return answers.next(card);
  }

  /** Offers to continue the draft after its last answer; false if the person stopped. */
  private boolean resume() {
    Map<String, String> left = draft.answers();
    console.say(
        "There are "
            + left.size()
            + " answers from an earlier start: "
            + String.join(", ", left.entrySet().stream().limit(3).map(Object::toString).toList())
            + (left.size() > 3 ? " and so on." : "."));
    Optional<Boolean> goOn =
        Prompt.forWords(console)
            .until(
                "Go on with them? yes or no (Enter: yes)> ",
                List.of("yes", "no"),
                line ->
                    Prompt.word(line, List.of("", "yes", "y", "no", "n"))
                        .map(i -> Prompt.Reading.of(i < 3))
                        .orElse(Prompt.Reading.again("Type yes or no.")));
    if (goOn.orElse(false)) {
      given.keySet().removeAll(answers.takeUp(left, card));
      back();
    }
    return goOn.isPresent();
  }

  /** Takes back the last typed answer, with all that followed from it without being asked. */
  private void back() {
    if (!answers.back()) {
      console.say("There is no question before this one.");
    }
  }

  /** Asks until there is an answer or the person goes back; false if they stopped. */
  private boolean ask(Question question) {
    if (!question.before().isEmpty()) {
      console.show(Block.blank());
      question.before().forEach(console::say);
    }
    Optional<String> enter = answers.enter(question);
    while (true) {
      Optional<String> line =
          Prompt.withLeave(console)
              .line(
                  QuestionViews.prompt(question, enter),
                  question.known().stream().map(Candidate::id).toList());
      if (line.isEmpty()) {
        return false;
      }
      String text = line.get();
      Optional<Words.Wish> wish = text.startsWith("?") ? Optional.empty() : Words.wish(text);
      if (text.startsWith("?")) {
        console.show(QuestionViews.known(question, text.substring(1).strip()));
      } else if (wish.equals(Optional.of(Words.Wish.HELP))) {
        console.show(QuestionViews.known(question, ""));
      } else if (wish.equals(Optional.of(Words.Wish.BACK))) {
        back();
        return true;
      } else if (answered(question, text.isEmpty() ? enter.orElse("") : text)) {
        return true;
      }
    }
  }

  private boolean answered(Question question, String text) {
    String answer = text.equals(NOTHING) ? question.usual().orElse(text) : text;
    Optional<String> complaint = question.complaint().apply(answer);
    if (complaint.isPresent()) {
      console.say(
          complaint.get() + (question.known().isEmpty() ? "" : " ? lists all, ? WORD some."));
      return false;
    }
    answers.asked(question, answer);
    question.told().apply(answer).forEach(console::say);
    return true;
  }
}
