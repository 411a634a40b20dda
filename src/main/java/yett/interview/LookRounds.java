package yett.interview;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Telling;

/**
 * Makes one step of the look that the plan chose and the other looks that can be made with it, at
 * the same place and in the same state of the work.
 */
record LookRounds(Present present, NextStep.Adviser adviser, SetUpSteps steps) {
  /** Bits that a look must tell on average to be made with others: less is hardly worth reading. */
  static final double LEAST_BITS = 0.01;

  /**
   * The round around a check, or the set-up that it needs first; empty where the check is better
   * asked by itself.
   *
   * @param open ids of checks that may be asked now
   */
  Optional<Step> around(Check chosen, Set<String> open, Optional<Advice> advice, Occasion why) {
    boolean wanted = why.kind() == Occasion.Kind.ASKED_FOR; // and nothing else is
    if (chosen.place().isEmpty() || wanted || present.isCall()) {
      return Optional.empty(); // somebody on the telephone is asked one thing at a time
    }
    Place place = chosen.place().get();
    Set<String> needs = new LinkedHashSet<>(place.needs());
    needs.addAll(chosen.needs());
    if (!mayBe(needs)) {
      return Optional.empty();
    }
    List<Step.Ask> looks = new ArrayList<>();
    looks.add(steps.question(chosen, advice, why));
    List<Telling.Told> all =
        adviser.tells(
            present.belief,
            open.stream()
                .map(present.base.checks()::get)
                .filter(c -> c.place().equals(chosen.place()) && present.isOpenTo(c))
                .map(Check::id)
                .toList());
    double fair = minutesForABit(chosen, all, advice);
    for (Telling.Told told : all) {
      Check other = present.base.checks().get(told.check());
      List<Step.Ask> more = new ArrayList<>(looks);
      more.add(steps.question(other, Optional.empty(), why));
      if (Step.LookRound.isOnePage(more)
          && !other.id().equals(chosen.id())
          && told.bits() >= LEAST_BITS
          && other.minutes() <= fair * told.bits()
          && steps.fits(needs, other.needs())) {
        needs.addAll(other.needs());
        looks = more;
      }
    }
    return looks.size() > 1
        ? Optional.of(steps.look(place, List.copyOf(looks), List.copyOf(needs)))
        : Optional.empty();
  }

  /**
   * What the chosen look costs for what it tells, with walking there and set-ups: the others save
   * these, and are worth their minutes if they tell no less for them.
   */
  private double minutesForABit(Check chosen, List<Telling.Told> all, Optional<Advice> advice) {
    double minutes =
        advice.stream()
            .flatMap(a -> a.candidates().stream())
            .filter(c -> c.check().equals(chosen.id()))
            .mapToDouble(Advice.Candidate::minutes)
            .findFirst()
            .orElse(0);
    double least = present.base.planning().question() + chosen.minutes();
    return all.stream()
        .filter(t -> t.check().equals(chosen.id()) && t.bits() > 0)
        .mapToDouble(t -> Math.max(least, minutes) / t.bits())
        .findFirst()
        .orElse(0);
  }

  /** Whether this person may bring about the state of the work. */
  private boolean mayBe(Set<String> needs) {
    return present.base.withOuter(List.copyOf(needs)).stream()
        .allMatch(
            id -> {
              SetUp setUp = present.base.setUps().get(id);
              return setUp != null && present.role().may(setUp.who()) && !present.isForbidden(id);
            });
  }
}
