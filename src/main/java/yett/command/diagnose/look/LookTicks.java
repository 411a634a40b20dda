package yett.command.diagnose.look;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.interview.event.Answer;
import yett.knowledge.Check;

/** Several answers to one look of a round, where several may be true. */
final class LookTicks {
  private LookTicks() {}

  /**
   * The outcomes that a line of letters names, such as "b" or, where several may be true, "bd" or
   * "b and d". Empty if it is no such line; letters that run together are one only without that of
   * the ordinary answer, because that goes with no other.
   */
  static List<String> letters(Check check, String line) {
    List<String> parts = check.several() ? ListChoice.apart(line) : List.of(line);
    String letters = String.join("", parts).replaceAll("\\s", "");
    char last = (char) ('a' + check.outcomes().size() - 1);
    boolean run =
        check.several()
            && letters.matches("[b-" + last + "]{2,}")
            && letters.chars().distinct().count() == letters.length();
    boolean named = run || parts.stream().allMatch(p -> p.matches("[a-" + last + "]"));
    return named
        ? letters.chars().mapToObj(c -> check.outcomes().get(c - 'a').id()).toList()
        : List.of();
  }

  /** Whether letters that follow the number of a look are answers to it, such as those of "3bd". */
  static boolean areAnswers(List<Check> looks, int number, String letters) {
    return letters.length() < 2
        || number >= 1
            && number <= looks.size()
            && !letters(looks.get(number - 1), letters).isEmpty();
  }

  /**
   * Adds an answer to a look to what was said of it before, or puts it in its place if only one may
   * be true.
   *
   * @return what is wrong with it, if the two do not go together
   */
  static Optional<String> add(
      List<Check> looks, Map<Integer, Optional<Answer>> said, int look, Optional<Answer> answer) {
    Check check = looks.get(look);
    List<String> before = choices(said.getOrDefault(look, Optional.empty()));
    if (!check.several() || before.isEmpty() || choices(answer).isEmpty()) {
      said.put(look, answer);
      return Optional.empty();
    }
    HeardAnswer all =
        HeardAnswer.together(
            check, Stream.concat(before.stream(), choices(answer).stream()).toList());
    said.put(look, all.answer());
    return all.answer().isPresent() ? Optional.empty() : Optional.of(all.complaint());
  }

  private static List<String> choices(Optional<Answer> answer) {
    return answer.map(Answer::choices).orElse(List.of());
  }

  /** A further answer to a look of which one was given: "and d", "and bangs". */
  static Optional<Answer> further(Check check, String words) {
    return check.several() ? LookAnswers.of(check, withoutAnd(words)).answer() : Optional.empty();
  }

  static String withoutAnd(String words) {
    return words.replaceFirst("^(?:and\\b|&|\\+)\\s*", "");
  }
}
