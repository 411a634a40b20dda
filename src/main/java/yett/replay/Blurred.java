package yett.replay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * A recorded case with some answers made worse, to measure how much its result depends on good
 * answers. Answers to dangers, proofs and complaints stay. Where a case leaves open what a sound
 * gate would show, that counts as an answer; "cannot tell" and "not now" do not. The same seed
 * gives the same changes, for each check independently: a new card changes no other's answer.
 */
public final class Blurred {
  /** One answer in this many is replaced by another outcome. */
  static final int ONE_WRONG_IN = 10;

  /** One answer in this many is replaced by "cannot tell". */
  static final int ONE_MISSING_IN = 3;

  private final RecordedCase recorded;
  private final RuleBase base;
  private final long seed;

  /**
   * Prepares to blur a case.
   *
   * @param base that the case was read against
   * @param seed of the random choices
   */
  public Blurred(RecordedCase recorded, RuleBase base, long seed) {
    this.recorded = recorded;
    this.base = base;
    this.seed = seed;
  }

  /**
   * The case with every tenth answer, on average, changed to another outcome of its check.
   *
   * @param meant the outcome that a reading was taken to mean, by check, as far as that is known; a
   *     reading of any other check becomes any outcome, possibly the same one
   */
  public RecordedCase wrong(Map<String, String> meant) {
    return changed(
        ONE_WRONG_IN,
        (check, seen) -> {
          String outcome =
              seen.choice().orElseGet(() -> meant.getOrDefault(check.id(), "")); // of a reading
          List<String> others =
              check.outcomes().stream()
                  .map(Check.Outcome::id)
                  .filter(o -> !o.equals(outcome) && !seen.is(o))
                  .toList();
          return new Answer.Chosen(others.get(draw(check, "which", others.size())));
        });
  }

  /** The case with a third of the answers, on average, replaced by "cannot tell". */
  public RecordedCase missing() {
    return changed(ONE_MISSING_IN, (check, seen) -> new Answer.CannotTell());
  }

  private RecordedCase changed(int oneIn, BiFunction<Check, Answer, Answer> change) {
    Map<String, RepeatedAnswer<Answer>> answers = new LinkedHashMap<>(recorded.answers());
    base.ordinaryChecks()
        .filter(check -> !check.danger() && draw(check, "whether", oneIn) == 0)
        .forEach(
            check ->
                told(check)
                    .filter(told -> told.turns().get(0).tells())
                    .ifPresent(told -> answers.put(check.id(), first(check, told, change))));
    return recorded.withAnswers(answers);
  }

  private Optional<RepeatedAnswer<Answer>> told(Check check) {
    RepeatedAnswer<Answer> told = recorded.answers().get(check.id());
    return told == null && recorded.othersUsual()
        ? Optional.of(RepeatedAnswer.always(new Answer.Chosen(check.outcomes().get(0).id())))
        : Optional.ofNullable(told);
  }

  /** Changes only the answer for the gate as found; later answers in a list stay. */
  private static RepeatedAnswer<Answer> first(
      Check check, RepeatedAnswer<Answer> told, BiFunction<Check, Answer, Answer> change) {
    Answer changed = change.apply(check, told.turns().get(0));
    return new RepeatedAnswer<>(
        Stream.concat(Stream.of(changed), told.turns().stream().skip(1)).toList(), told.inOrder());
  }

  private int draw(Check check, String what, int bound) {
    long own = (recorded.name() + " " + check.id() + " " + what).hashCode();
    return new SplittableRandom(31 * seed + own).nextInt(bound);
  }
}
