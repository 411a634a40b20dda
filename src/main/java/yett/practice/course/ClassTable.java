package yett.practice.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import yett.knowledge.Names;
import yett.practice.Result;

/**
 * The ranking of the trainees of a course. It is sorted first by what went wrong (a safety error
 * counts as much as a gate that was left to somebody else), then by gates put right, then by faults
 * confirmed before the repair, and last by time and parts. Handing over counts because a trainee
 * who hands every gate over makes no safety error, but has learnt nothing.
 *
 * @param rows one for each trainee, those without any result last
 * @param unused results that do not count, and why
 */
public record ClassTable(List<Row> rows, List<String> unused) {
  /** Two shorter names may differ in every letter and still count as near. */
  private static final int LONG_ENOUGH = 6;

  /**
   * @param done exercises of the course that were finished
   * @param slips safety errors in all of them
   * @param putRight gates that were put right and proved
   * @param confirmed those of them without any repair on suspicion
   * @param hints hints taken in all of them; told, not weighed
   * @param time minutes for each minute of the plan's average, over gates that were put right
   * @param parts money for parts beyond the plan's average, over the same gates
   */
  public record Row(
      String trainee,
      int done,
      int slips,
      int putRight,
      int confirmed,
      int hints,
      OptionalDouble time,
      OptionalDouble parts) {}

  /**
   * @param averages what each exercise costs the plan, in the order of the exercises
   * @param ruleBase version of the cards for which the averages were computed
   */
  public static ClassTable of(
      Course course, List<Result> results, List<PlanAverage> averages, String ruleBase) {
    List<String> unused = new ArrayList<>();
    Map<String, Map<Integer, Result>> all = new TreeMap<>();
    course.trainees().forEach(t -> all.put(t, new TreeMap<>()));
    results.stream()
        .sorted(Comparator.comparing(Result::at))
        .filter(r -> counts(course, r, ruleBase, unused))
        .forEach(r -> first(all, r, unused));
    List<Row> rows = new ArrayList<>();
    course.trainees().forEach(t -> rows.add(row(t, all.get(t), averages)));
    rows.sort(
        Comparator.comparing((Row r) -> r.done() == 0)
            .thenComparing(r -> share(r.slips() + r.done() - r.putRight(), r.done()))
            .thenComparing(r -> -share(r.putRight(), r.done()))
            .thenComparing(r -> -share(r.confirmed(), r.done()))
            .thenComparing(r -> r.time().orElse(Double.MAX_VALUE))
            .thenComparing(r -> r.parts().orElse(Double.MAX_VALUE)));
    return new ClassTable(List.copyOf(rows), List.copyOf(unused));
  }

  private static boolean counts(
      Course course, Result result, String ruleBase, List<String> unused) {
    if (result.course().filter(s -> s.course().equals(course.id())).isEmpty()) {
      return false; // practised without a course, or in another one
    }
    Result.Sitting sitting = result.course().get();
    String whose = "Exercise " + sitting.number() + " of " + sitting.trainee();
    if (!course.trainees().contains(sitting.trainee())) {
      unused.add(
          whose
              + ": nobody of this name is in the course."
              + Names.nearest(sitting.trainee(), course.trainees())
                  .filter(name -> name.length() >= LONG_ENOUGH)
                  .map(name -> " Maybe " + name + "?")
                  .orElse(""));
      return false;
    }
    if (sitting.number() < 1 || sitting.number() > course.tasks().size()) {
      unused.add(whose + ": the course has no such exercise.");
      return false;
    }
    if (!sitting.ruleBase().equals(ruleBase)) {
      unused.add(whose + ": it was done with other cards, so its gate was another.");
      return false;
    }
    return true;
  }

  /**
   * Keeps the first result of an exercise only, because a trainee who repeats it knows the gate.
   */
  private static void first(
      Map<String, Map<Integer, Result>> all, Result result, List<String> unused) {
    Result.Sitting sitting = result.course().orElseThrow();
    if (all.get(sitting.trainee()).putIfAbsent(sitting.number(), result) != null) {
      unused.add(
          "Exercise "
              + sitting.number()
              + " of "
              + sitting.trainee()
              + ": done again; the first time counts.");
    }
  }

  private static double share(int part, int all) {
    return all == 0 ? 0 : (double) part / all;
  }

  private static Row row(String trainee, Map<Integer, Result> results, List<PlanAverage> averages) {
    List<Result> right = results.values().stream().filter(Result::putRight).toList();
    return new Row(
        trainee,
        results.size(),
        results.values().stream().mapToInt(Result::slips).sum(),
        right.size(),
        (int) right.stream().filter(r -> r.guesses().filter(g -> g == 0).isPresent()).count(),
        results.values().stream().mapToInt(Result::hints).sum(),
        mean(right, r -> r.minutes() / Math.max(1, of(r, averages).minutes())),
        mean(right, r -> r.parts() - of(r, averages).parts()));
  }

  private static PlanAverage of(Result result, List<PlanAverage> averages) {
    return averages.get(result.course().orElseThrow().number() - 1);
  }

  private static OptionalDouble mean(List<Result> results, ToDoubleFunction<Result> what) {
    return results.stream().mapToDouble(what).average();
  }
}
