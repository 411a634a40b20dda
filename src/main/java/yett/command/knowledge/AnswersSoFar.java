package yett.command.knowledge;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yett.bench.NewCard;
import yett.bench.Question;

/**
 * The answers given so far about a new card. Answers that were taken back are kept, to be offered
 * again.
 */
final class AnswersSoFar {
  private final Map<String, String> answers = new LinkedHashMap<>();
  private final Deque<String> asked = new ArrayDeque<>();
  private final Map<String, String> earlier = new LinkedHashMap<>();

  Map<String, String> all() {
    return answers;
  }

  /** The first question that has no answer. */
  Optional<Question> next(NewCard card) {
    return next(card, answers);
  }

  static Optional<Question> next(NewCard card, Map<String, String> answers) {
    return card.questions(answers).stream().filter(q -> !answers.containsKey(q.key())).findFirst();
  }

  /** Adds an answer that did not have to be asked for. */
  void given(Question question, String answer) {
    answers.put(question.key(), answer);
  }

  /** Adds an answer that somebody typed. */
  void asked(Question question, String answer) {
    answers.put(question.key(), answer);
    earlier.remove(question.key());
    asked.push(question.key());
  }

  /** The answer that Enter alone gives: the one given before, or the usual one. */
  Optional<String> enter(Question question) {
    return Optional.ofNullable(earlier.get(question.key()))
        .filter(a -> question.complaint().apply(a).isEmpty())
        .or(question::usual);
  }

  /**
   * Takes over answers from an earlier start, up to the first one that is no longer valid.
   *
   * @return the keys of the answers taken over
   */
  Set<String> takeUp(Map<String, String> left, NewCard card) {
    Set<String> taken = new TreeSet<>();
    earlier.putAll(left);
    for (Optional<Question> next = next(card); next.isPresent(); next = next(card)) {
      String key = next.get().key();
      if (!left.containsKey(key) || next.get().complaint().apply(left.get(key)).isPresent()) {
        break;
      }
      answers.put(key, earlier.remove(key));
      asked.push(key);
      taken.add(key);
    }
    return taken;
  }

  /**
   * Takes back the last typed answer, with all that followed from it without being asked.
   *
   * @return whether there was one
   */
  boolean back() {
    if (asked.isEmpty()) {
      return false;
    }
    String last = asked.pop();
    List<String> keys = new ArrayList<>(answers.keySet());
    keys.subList(keys.indexOf(last), keys.size()).forEach(k -> earlier.put(k, answers.remove(k)));
    return true;
  }
}
