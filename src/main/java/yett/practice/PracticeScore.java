package yett.practice;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yett.interview.course.Expertise;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.Replayed;
import yett.replay.Replayer;

/**
 * What an exercise cost, compared with the plan's way on the same gate. The plan had the same
 * knowledge and asked the same gate.
 *
 * @param expected minutes that the plan expects for a gate reported like this, on average over all
 *     that may be wrong; includes the weight of hazards, parts and handing over
 * @param parts price of the parts that the trainee fitted
 */
public record PracticeScore(
    boolean putRight,
    double minutes,
    double cost,
    double planMinutes,
    double planCost,
    double expected,
    List<Replayed.Taken> planSteps,
    double parts) {

  public static PracticeScore of(Expertise expertise, Workbench bench) {
    RuleBase base = expertise.base();
    Exercise exercise = bench.exercise();
    Replayed plan = new Replayer(expertise).run(exercise.told(), exercise.gate(base));
    double planParts = plan.repairs().stream().mapToDouble(r -> price(base, r.repair())).sum();
    double parts =
        bench.moment().entries().stream()
            .map(e -> e.event())
            .filter(e -> e instanceof Event.Repaired r && r.done())
            .mapToDouble(e -> price(base, ((Event.Repaired) e).repair()))
            .sum();
    double minute = base.planning().minute();
    boolean proved = bench.moment().state().closed().filter(Ending::isProved).isPresent();
    return new PracticeScore(
        proved && bench.remaining().isEmpty(),
        bench.minutes(),
        bench.minutes() * minute + parts,
        plan.spentMinutes(),
        plan.spentMinutes() * minute + planParts,
        plan.expectedMinutes(),
        plan.steps(),
        parts);
  }

  private static double price(RuleBase base, String repair) {
    Repair card = base.repairs().get(repair);
    return card == null ? 0 : card.price();
  }

  public Result result(Instant at, Workbench bench, Optional<Result.Sitting> course) {
    Exercise exercise = bench.exercise();
    return new Result(
        at,
        exercise.told().name(),
        exercise.seed(),
        exercise.area(),
        exercise.level().word(),
        putRight,
        bench.moment().state().closed().map(Ending::words).orElse("unfinished"),
        tenths(minutes),
        tenths(cost),
        tenths(planMinutes),
        tenths(planCost),
        bench.slips().size(),
        bench.hints(),
        tenths(parts),
        Optional.of(bench.guesses().size()),
        course);
  }

  private static double tenths(double number) {
    return Math.round(number * 10) / 10.0;
  }
}
