package yett.practice.course;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import yett.interview.course.Expertise;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.practice.Exercise;
import yett.replay.InOrder;
import yett.replay.Replayed;
import yett.replay.Replayer;

/**
 * What an exercise costs the plan on average over many gates with the same report and the same
 * fault, each of which shows the fault in its own way. On a single gate the plan may be lucky.
 *
 * @param minutes of the cards, including gates that it handed over
 * @param parts their price
 * @param draws number of gates
 */
public record PlanAverage(double minutes, double parts, int draws) {
  private static final long STEP = 0x9E3779B97F4A7C15L;

  /**
   * @param progress called after each gate
   */
  public static PlanAverage of(
      Expertise expertise, Exercise exercise, int draws, Runnable progress) {
    List<Callable<Replayed>> tasks = new ArrayList<>();
    for (int i = 0; i < draws; i++) {
      Exercise other =
          new Exercise(
              exercise.told(),
              exercise.drawn(),
              exercise.seed() + i * STEP,
              exercise.area(),
              exercise.level());
      tasks.add(
          () ->
              new Replayer(expertise)
                  .run(other.told(), other.gate(expertise.base()))
                  .withoutMoment());
    }
    List<Replayed> runs = new ArrayList<>();
    InOrder.run(
        tasks,
        InOrder.threads(),
        run -> {
          runs.add(run);
          progress.run();
        });
    return new PlanAverage(
        runs.stream().collect(Collectors.averagingDouble(Replayed::spentMinutes)),
        runs.stream().collect(Collectors.averagingDouble(r -> parts(r, expertise.base()))),
        draws);
  }

  private static double parts(Replayed run, RuleBase base) {
    return run.repairs().stream()
        .map(mended -> base.repairs().get(mended.repair()))
        .mapToDouble(Repair::price)
        .sum();
  }
}
