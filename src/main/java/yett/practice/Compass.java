package yett.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.SomeSteps;
import yett.interview.Step;
import yett.plan.Advice;
import yett.replay.Reasons;
import yett.wording.StepWords;

/** Tells what the plan would do next, knowing what the trainee knows. */
final class Compass {
  /** What stands for a step that has no card. */
  static final String RETEST = "retest";

  static final String HAND_OVER = "hand-over";
  private static final String DANGERS = "dangers";
  private static final String FINISH = "finish";

  private static final int MOST_CHANGES = 8;

  private final Interview interview;

  /** Looks of the round that was begun: whoever makes one of them makes the others with it. */
  private Set<String> round = Set.of();

  Compass(Interview interview) {
    this.interview = interview;
  }

  /**
   * @param card id of the check or repair, or what stands for it; empty if nothing is left
   * @param advice what the choice was between
   * @param alike ids of the other looks of a round: they are made in any order
   */
  record Best(
      String card, String words, String reason, Optional<Advice> advice, Set<String> alike) {
    Best(String card, String words, String reason, Optional<Advice> advice) {
      this(card, words, reason, advice, Set.of());
    }
  }

  /** What is next, once the state of the work is as it needs to be. */
  Best best(Moment now) {
    Moment moment = now;
    List<Entry> entries = new ArrayList<>(now.entries());
    for (int i = 0; i < MOST_CHANGES; i++) {
      Optional<Event> change = moment.step().accept(CHANGE);
      if (change.isEmpty()) {
        break;
      }
      entries.add(new Entry(entries.size() + 1L, Opening.START, now.state().role(), change.get()));
      moment = interview.at(entries);
    }
    return moment.step().accept(BEST);
  }

  /** Changes of the state of the work. */
  private static final SomeSteps<Optional<Event>> CHANGE =
      new SomeSteps<>() {
        @Override
        public Optional<Event> enter(Step.Enter step) {
          return Optional.of(step.done());
        }

        @Override
        public Optional<Event> leave(Step.Leave step) {
          return Optional.of(step.done());
        }

        @Override
        public Optional<Event> other(Step step) {
          return Optional.empty();
        }
      };

  /** Steps that a trainee can choose. */
  private static final SomeSteps<Best> BEST =
      new SomeSteps<>() {
        @Override
        public Best ask(Step.Ask step) {
          return new Best(
              step.card(), step.check().ask(), Reasons.withoutRunnerUp(step), step.advice());
        }

        @Override
        public Best lookRound(Step.LookRound step) {
          Best first = ask(step.first());
          return new Best(
              first.card(),
              first.words(),
              first.reason(),
              first.advice(),
              step.looks().stream().map(Step::card).collect(Collectors.toSet()));
        }

        @Override
        public Best mend(Step.Mend step) {
          return new Best(
              step.card(), step.repair().name(), Reasons.of(step).words(), step.advice());
        }

        @Override
        public Best retest(Step.Retest step) {
          return new Best(
              RETEST,
              "Try the gate",
              "whether it runs tells more than any check now",
              Optional.empty());
        }

        @Override
        public Best handOver(Step.HandOver step) {
          return new Best(
              HAND_OVER, "Hand over", StepWords.because(step.because()), Optional.empty());
        }

        @Override
        public Best askDangers(Step.AskDangers step) {
          return new Best(DANGERS, "Look for dangers", "people come first", Optional.empty());
        }

        @Override
        public Best closeRepaired(Step.CloseRepaired step) {
          return new Best(FINISH, "Back into service", "every proof passed", Optional.empty());
        }

        @Override
        public Best other(Step step) {
          return new Best("", "", "", Optional.empty());
        }
      };

  /** How a choice differs from the best; empty if it is as good. */
  Optional<Departure> departure(Moment now, String card, String words, double minute) {
    if (round.contains(card)) {
      return Optional.empty();
    }
    Best best = best(now);
    round = best.alike().contains(card) ? best.alike() : Set.of();
    if (best.card().isEmpty() || best.card().equals(card) || round.contains(card)) {
      return Optional.empty();
    }
    double lost = lost(best, card);
    return lost >= 0 && lost < Departure.WORTH_TELLING
        ? Optional.empty()
        : Optional.of(new Departure(minute, words, best.words(), best.reason(), lost));
  }

  private double lost(Best best, String card) {
    if (best.advice().isEmpty()) {
      return -1;
    }
    Advice advice = best.advice().get();
    double first = advice.kind() == Advice.Kind.ASK ? advice.candidates().get(0).saves() : 0;
    boolean repairing =
        advice.kind() == Advice.Kind.ASK
            && advice.jobs().stream().findFirst().filter(j -> j.repair().equals(card)).isPresent();
    if (repairing) {
      return Math.max(0, first);
    }
    return advice.candidates().stream()
        .filter(c -> c.check().equals(card))
        .findFirst()
        .map(c -> Math.max(0, first - c.saves()))
        .orElse(-1.0);
  }
}
