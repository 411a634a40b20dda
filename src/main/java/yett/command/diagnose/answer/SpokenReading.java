package yett.command.diagnose.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Answer;
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
public record SpokenReading(String typed, String words, List<Check> checks) {
  /** Whether a line has a reading or a number among its words. */
  public static boolean isIn(String line, RuleBase base) {
    return all(line, base).stream().anyMatch(r -> r.hasUnit() || !r.words().isEmpty());
  }

  /**
   * The first that has a unit, else the only number beside other words. Of several bare numbers
   * none is picked out: "the selector is on 230 and the supply 120" compares two.
   */
  public static Optional<SpokenReading> best(List<SpokenReading> all) {
    return all.stream()
        .filter(SpokenReading::hasUnit)
        .findFirst()
        .or(() -> all.stream().filter(r -> all.size() == 1 && !r.words().isEmpty()).findFirst());
  }

  /** The parts of a line that any check can read, each as long as possible. */
  public static List<SpokenReading> all(String line, RuleBase base) {
    List<Check> measured = base.ordinaryChecks().filter(c -> c.measured() && !c.danger()).toList();
    List<String> tokens = Arrays.asList(line.strip().split("[\\s;]+|,\\s+"));
    List<SpokenReading> all = new ArrayList<>();
    int from = 0;
    while (from < tokens.size()) {
      int to = tokens.get(from).matches("[-+]?[.,]?\\d.*|(?i:between)") ? tokens.size() : from;
      List<Check> fit = List.of();
      while (to > from && fit.isEmpty()) {
        String typed = String.join(" ", tokens.subList(from, to));
        fit =
            measured.stream()
                .filter(c -> single(c, typed).isPresent() || range(c, typed).isPresent())
                .toList();
        to -= fit.isEmpty() ? 1 : 0;
      }
      if (!fit.isEmpty()) {
        all.add(
            new SpokenReading(
                String.join(" ", tokens.subList(from, to)),
                Stream.concat(
                        tokens.subList(0, from).stream(),
                        tokens.subList(to, tokens.size()).stream())
                    .collect(Collectors.joining(" ")),
                fit));
      }
      from = Math.max(from + 1, to);
    }
    return all;
  }

  /**
   * Where the reading stands in a longer sentence.
   *
   * @param named the words about the reading: those beside it, and the clause before
   * @param rest the other clauses; may be empty
   */
  public record Context(String named, String rest) {}

  /** What of a line names this reading, and what tells of something else. */
  public Context in(String line) {
    List<String> clauses = Arrays.asList(line.strip().split("[.,;:!?]+\\s+"));
    int own = 0;
    while (own < clauses.size() && !clauses.get(own).contains(typed)) {
      own++;
    }
    if (clauses.size() < 3 || own == clauses.size()) {
      return new Context(words, "");
    }
    int before = Math.max(0, own - 1);
    String beside = clauses.get(own).replace(typed, " ").strip();
    String named = own == before ? beside : clauses.get(before) + " " + beside;
    List<String> rest = new ArrayList<>(clauses.subList(0, before));
    rest.addAll(clauses.subList(own + 1, clauses.size()));
    return new Context(named.strip(), String.join(", ", rest));
  }

  /** Whether it was typed with its unit. */
  public boolean hasUnit() {
    return typed.matches(".*[^\\d.,+\\-/\\s].*");
  }

  private static Optional<Answer> single(Check check, String typed) {
    return HeardAnswer.reading(check.measures().get(), typed).answer();
  }

  /** Among other words only a range with its unit is one: "gate 3-4" is none. */
  private static Optional<WanderingReading> range(Check check, String typed) {
    return typed.matches(".*\\D") ? WanderingReading.of(check, typed) : Optional.empty();
  }

  /** The reading that counts; empty if it wanders, and the person chose neither end. */
  public Optional<Answer> answer(Check check, Sitting sitting) {
    return single(check, typed)
        .or(() -> range(check, typed).flatMap(w -> new Wandering(sitting).take(check, w)));
  }

  /** The reading as it is shown back: what was measured, and the value with its unit. */
  public String shown(Check check) {
    String value =
        single(check, typed)
            .flatMap(Answer::reading)
            .map(read -> check.measures().get().show(read.value()))
            .orElse(typed);
    return Wording.capital(Wording.spaced(check.id())) + ": " + value + ".";
  }
}
