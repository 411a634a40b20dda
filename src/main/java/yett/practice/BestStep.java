package yett.practice;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.plan.Advice;
import yett.replay.Reasons;
import yett.wording.StepWords;

/**
 * The step that the plan would take, in the form in which a trainee can choose it.
 *
 * @param card id of the check or repair, or a word for a step without one; empty if nothing is left
 * @param advice what the plan chose between
 * @param alike ids of the other looks of a round, which may be made in any order
 */
record BestStep(
    String card, String words, String reason, Optional<Advice> advice, Set<String> alike) {
  /** The word for the try of the gate, which has no card. */
  static final String RETEST = "retest";

  static final String HAND_OVER = "hand-over";
  private static final String DANGERS = "dangers";
  static final String FINISH = "finish";

  /** Converts the steps that a trainee can choose. */
  private static final SomeSteps<BestStep> OF =
      new SomeSteps<>() {
        @Override
        public BestStep ask(Step.Ask step) {
          return new BestStep(
              step.card(), step.check().ask(), Reasons.withoutRepair(step), step.advice());
        }

        @Override
        public BestStep lookRound(Step.LookRound step) {
          BestStep first = ask(step.first());
          return new BestStep(
              first.card(),
              first.words(),
              first.reason(),
              first.advice(),
              step.looks().stream().map(Step::card).collect(Collectors.toSet()));
        }

        @Override
        public BestStep mend(Step.Mend step) {
          return new BestStep(
              step.card(), step.repair().name(), Reasons.of(step).words(), step.advice());
        }

        @Override
        public BestStep retest(Step.Retest step) {
          return new BestStep(
              RETEST,
              "Try the gate",
              "whether it runs says more than any check now",
              Optional.empty());
        }

        @Override
        public BestStep handOver(Step.HandOver step) {
          return new BestStep(
              HAND_OVER, "Hand over", StepWords.because(step.because()), Optional.empty());
        }

        @Override
        public BestStep askDangers(Step.AskDangers step) {
          return new BestStep(DANGERS, "Look for dangers", "people come first", Optional.empty());
        }

        @Override
        public BestStep closeRepaired(Step.CloseRepaired step) {
          return new BestStep(FINISH, "Back into service", "every proof passed", Optional.empty());
        }

        @Override
        public BestStep other(Step step) {
          return new BestStep("", "", "", Optional.empty());
        }
      };

  BestStep(String card, String words, String reason, Optional<Advice> advice) {
    this(card, words, reason, advice, Set.of());
  }

  static BestStep of(Step step) {
    return step.accept(OF);
  }
}
