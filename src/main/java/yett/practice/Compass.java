package yett.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.plan.Advice;

/** Finds what the plan would do next with the trainee's knowledge. */
final class Compass {
  private static final int MOST_CHANGES = 8;

  private final Interview interview;

  /** The other looks of the round that was begun; somebody who makes one of them makes them all. */
  private Set<String> round = Set.of();

  Compass(Interview interview) {
    this.interview = interview;
  }

  /** The next step, after the changes of set-ups that it needs. */
  BestStep best(Moment now) {
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
    return BestStep.of(moment.step());
  }

  /** Converts a step that enters or leaves a set-up into its event. */
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

  /** How a choice differs from the best step; empty if it is as good. */
  Optional<Departure> departure(Moment now, String card, String words, double minute) {
    if (round.contains(card)) {
      return Optional.empty();
    }
    BestStep best = best(now);
    round = best.alike().contains(card) ? best.alike() : Set.of();
    if (best.card().isEmpty() || best.card().equals(card) || round.contains(card)) {
      return Optional.empty();
    }
    double lost = lost(best, card);
    return lost >= 0 && lost < Departure.WORTH_TELLING
        ? Optional.empty()
        : Optional.of(new Departure(minute, words, best.words(), best.reason(), lost));
  }

  private double lost(BestStep best, String card) {
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
