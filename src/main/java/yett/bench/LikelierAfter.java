package yett.bench;

import java.util.Optional;
import yett.knowledge.RuleBase;

/** Reads what makes a new cause likelier, and how many times: {@code heavy-rain 3}. */
final class LikelierAfter {
  private LikelierAfter() {}

  /** What is wrong with an answer; empty if nothing is. */
  static Optional<String> complaint(String answer, RuleBase base) {
    return RowAnswer.parts(answer).entrySet().stream()
        .map(
            part ->
                Lists.unknown(part.getKey(), "history", base.histories().keySet())
                    .or(
                        () ->
                            CardQuestions.number(0.01, 100)
                                .apply(part.getValue())
                                .map(
                                    c ->
                                        "Write after it how many times likelier, such as: "
                                            + part.getKey()
                                            + " 3."))
                    .or(() -> noChange(part.getKey(), part.getValue())))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> noChange(String history, String factor) {
    return Double.parseDouble(factor) == 1
        ? Optional.of(
            "1 changes nothing; leave " + history + " out, or say how many times likelier.")
        : Optional.empty();
  }
}
