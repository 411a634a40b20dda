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

/** What was answered about a new card; what was taken back is offered again. */
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

  /** An answer that nobody was asked for. */
  void given(Question question, String answer) {
    answers.put(question.key(), answer);
  }

  /** An answer that somebody typed. */
  void asked(Question question, String answer) {
    answers.put(question.key(), answer);
    earlier.remove(question.key());
    asked.push(question.key());
  }

  /** What Enter alone stands for: what was answered before, or what is usual. */
  Optional<String> enter(Question question) {
    return Optional.ofNullable(earlier.get(question.key()))
        .filter(a -> question.complaint().apply(a).isEmpty())
        .or(question::usual);
  }

  /**
   * Takes up answers of an earlier start, up to the first that will not do any more.
   *
   * @return the keys of those that were taken
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
   * Takes the last answer back, with all that was not asked after it.
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
