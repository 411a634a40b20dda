package yett.command.diagnose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.interview.Answer;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/**
 * A reading within a line of words, such as "battery 23.1 V at rest".
 *
 * @param typed the reading alone, as it was typed
 * @param words the rest of the line; may be empty
 * @param checks those that can have such a reading
 */
record SpokenReading(String typed, String words, List<Check> checks) {
  /** The first and longest part of a line that any check can read; empty if there is none. */
  static Optional<SpokenReading> of(String line, RuleBase base) {
    List<Check> measured = base.ordinaryChecks().filter(c -> c.measured() && !c.danger()).toList();
    List<String> tokens = Arrays.asList(line.strip().split("\\s+"));
    for (int from = 0; from < tokens.size(); from++) {
      if (!tokens.get(from).matches("[-+]?[.,]?\\d.*")) {
        continue;
      }
      for (int to = tokens.size(); to > from; to--) {
        String typed = String.join(" ", tokens.subList(from, to));
        String words =
            Stream.concat(
                    tokens.subList(0, from).stream(), tokens.subList(to, tokens.size()).stream())
                .collect(Collectors.joining(" "));
        boolean unit = typed.matches(".*[^\\d.,+\\-/\\s].*");
        if (!unit && words.isEmpty()) {
          continue; // a bare number is an answer, or a slip
        }
        List<Check> fit = new ArrayList<>(measured);
        fit.removeIf(c -> HeardAnswer.reading(c.measures().get(), typed).answer().isEmpty());
        if (!fit.isEmpty()) {
          return Optional.of(new SpokenReading(typed, words, List.copyOf(fit)));
        }
      }
    }
    return Optional.empty();
  }

  Answer answer(Check check) {
    return HeardAnswer.reading(check.measures().get(), typed).answer().orElseThrow();
  }

  /** The reading as it is shown back: what was measured, and the value with its unit. */
  String shown(Check check) {
    double value = answer(check).reading().orElseThrow().value();
    return Wording.capital(Wording.spaced(check.id()))
        + ": "
        + check.measures().get().show(value)
        + ".";
  }
}
