package yett.command.diagnose.look;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.command.common.ListChoice;
import yett.command.common.Words;
import yett.interview.event.Answer;
import yett.knowledge.Check;

/**
 * Words without a number at a round of looks, which answer the only look that has such an outcome.
 *
 * @param look its position; meaningless without an answer
 * @param complaint why the words are no answer, or more than one
 */
record SaidOfLooks(int look, Optional<Answer> answer, Optional<String> complaint) {

  /** An outcome of a look that is out of the ordinary. */
  private record Unusual(int look, Check.Outcome outcome) {}

  static SaidOfLooks hear(List<Check> looks, String text) {
    List<SaidOfLooks> parts =
        ListChoice.apart(text).stream().map(part -> one(looks, part)).distinct().toList();
    Set<Integer> meant = parts.stream().map(SaidOfLooks::look).collect(Collectors.toSet());
    if (parts.size() < 2
        || parts.stream().anyMatch(p -> p.answer().isEmpty())
        || meant.size() > 1
        || !looks.get(parts.get(0).look()).several()) {
      return one(looks, text);
    }
    List<String> all =
        parts.stream().flatMap(p -> p.answer().get().choices().stream()).distinct().toList();
    int look = parts.get(0).look();
    Answer together = Answer.Chosen.of(looks.get(look), all);
    return new SaidOfLooks(look, Optional.of(together), Optional.empty());
  }

  private static SaidOfLooks one(List<Check> looks, String text) {
    List<Unusual> unusual =
        IntStream.range(0, looks.size())
            .boxed()
            .flatMap(i -> looks.get(i).outcomes().stream().skip(1).map(o -> new Unusual(i, o)))
            .toList();
    List<String> ids = unusual.stream().map(u -> u.outcome().id()).toList();
    List<String> texts = unusual.stream().map(u -> u.outcome().text()).toList();
    List<Integer> same = ListChoice.same(text, ids, texts);
    List<Integer> found = same.isEmpty() ? ListChoice.pick(text, ids, texts) : same;
    if (found.size() == 1) {
      Unusual only = unusual.get(found.get(0));
      return new SaidOfLooks(
          only.look(), Optional.of(new Answer.Chosen(only.outcome().id())), Optional.empty());
    }
    return new SaidOfLooks(0, Optional.empty(), Optional.of(unclear(text, unusual, found)));
  }

  private static String unclear(String text, List<Unusual> unusual, List<Integer> found) {
    String quoted = Words.quoted(text);
    return found.isEmpty()
        ? quoted + " matches none of these looks. Type the number of the look first."
        : quoted
            + " could be more than one: "
            + found.stream()
                .map(unusual::get)
                .map(u -> (u.look() + 1) + " " + u.outcome().text())
                .collect(Collectors.joining("; "))
            + ". Type the number of the look as well.";
  }
}
