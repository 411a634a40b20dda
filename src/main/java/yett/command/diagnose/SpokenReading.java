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
 * A reading within a line of words, such as "battery 23.1 V at rest" or "the loop wanders from 2.6
 * to 9 ohm".
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
      if (!tokens.get(from).matches("[-+]?[.,]?\\d.*|(?i:between)")) {
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
        fit.removeIf(c -> single(c, typed).isEmpty() && range(c, typed).isEmpty());
        if (!fit.isEmpty()) {
          return Optional.of(new SpokenReading(typed, words, List.copyOf(fit)));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Answer> single(Check check, String typed) {
    return HeardAnswer.reading(check.measures().get(), typed).answer();
  }

  /** Among other words only a range with its unit is one: "gate 3-4" is none. */
  private static Optional<WanderingReading> range(Check check, String typed) {
    return typed.matches(".*\\D") ? WanderingReading.of(check, typed) : Optional.empty();
  }

  /** The reading that counts; empty if it wanders, and the person chose neither end. */
  Optional<Answer> answer(Check check, Sitting sitting) {
    return single(check, typed)
        .or(() -> range(check, typed).flatMap(w -> new Wandering(sitting).take(check, w)));
  }

  /** The reading as it is shown back: what was measured, and the value with its unit. */
  String shown(Check check) {
    String value =
        single(check, typed)
            .flatMap(Answer::reading)
            .map(read -> check.measures().get().show(read.value()))
            .orElse(typed);
    return Wording.capital(Wording.spaced(check.id())) + ": " + value + ".";
  }
}
