package yett.interview.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.moment.Present;
import yett.interview.setup.SetUpSteps;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Telling;

/**
 * Combines the look that the plan chose with other looks at the same place and in the same set-ups
 * into one step.
 */
public record LookRounds(Present present, Adviser adviser, SetUpSteps steps) {
  /**
   * Least average information (bits) for which a look joins a round; less is hardly worth reading.
   */
  static final double LEAST_BITS = 0.01;

  /**
   * The round of looks around a check, or the set-up that it needs first; empty where the check is
   * better asked alone.
   *
   * @param open ids of checks that may be asked now
   */
  Optional<Step> around(Check chosen, Set<String> open, Optional<Advice> advice, Occasion why) {
    boolean wanted = why.kind() == Occasion.Kind.ASKED_FOR; // then it is asked alone
    if (chosen.place().isEmpty() || wanted || present.isCall()) {
      return Optional.empty(); // on the telephone, one question at a time
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
            present.belief(),
            open.stream()
                .map(present.base().checks()::get)
                .filter(c -> c.place().equals(chosen.place()) && present.isOpenTo(c))
                .map(Check::id)
                .toList());
    double fair = minutesForABit(chosen, all, advice);
    for (Telling.Told told : all) {
      Check other = present.base().checks().get(told.check());
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
   * Minutes per bit of the chosen look, including the walk and set-ups. The others save these, so
   * each joins if it costs no more per bit.
   */
  private double minutesForABit(Check chosen, List<Telling.Told> all, Optional<Advice> advice) {
    double minutes =
        advice.stream()
            .flatMap(a -> a.candidates().stream())
            .filter(c -> c.check().equals(chosen.id()))
            .mapToDouble(Advice.Candidate::minutes)
            .findFirst()
            .orElse(0);
    double least = present.base().planning().question() + chosen.minutes();
    return all.stream()
        .filter(t -> t.check().equals(chosen.id()) && t.bits() > 0)
        .mapToDouble(t -> Math.max(least, minutes) / t.bits())
        .findFirst()
        .orElse(0);
  }

  /** Whether this person may enter these set-ups. */
  private boolean mayBe(Set<String> needs) {
    return present.base().withOuter(List.copyOf(needs)).stream()
        .allMatch(
            id -> {
              SetUp setUp = present.base().setUps().get(id);
              return setUp != null && present.role().may(setUp.who()) && !present.isForbidden(id);
            });
  }
}
