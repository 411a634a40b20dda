package yett.replay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import yett.interview.Answer;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * A recorded case with worse answers, to see how much of them its conclusion bears. Dangers, proofs
 * and complaints stay as they are. What a sound gate would show, where a case leaves that open,
 * counts among its answers; "cannot tell" and "not now" do not. The same seed blurs a case in the
 * same way, and each check by itself: a new card moves no other's answer.
 */
public final class Blurred {
  /** One answer in so many is another outcome than was seen. */
  static final int ONE_WRONG_IN = 10;

  /** One answer in so many cannot be told. */
  static final int ONE_MISSING_IN = 3;

  private final RecordedCase recorded;
  private final RuleBase base;
  private final long seed;

  /**
   * @param base that the case was read against
   * @param seed one way of blurring it
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
   *     reading of any other check becomes any outcome, by chance the one that it meant
   */
  public RecordedCase wrong(Map<String, String> meant) {
    return changed(
        ONE_WRONG_IN,
        (check, seen) -> {
          String outcome =
              seen.choice().orElseGet(() -> meant.getOrDefault(check.id(), "")); // a reading's
          List<String> others =
              check.outcomes().stream()
                  .map(Check.Outcome::id)
                  .filter(o -> !o.equals(outcome))
                  .toList();
          return new Answer.Chosen(others.get(draw(check, "which", others.size())));
        });
  }

  /** The case with a third of the answers, on average, changed to "cannot tell". */
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

  /** The gate as found is blurred; a list says the rest as before. */
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
