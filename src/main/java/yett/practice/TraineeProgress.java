package yett.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** A trainee's progress, area by area. */
public record TraineeProgress(List<Result> results) {
  /**
   * Only this many of the latest exercises of an area count, because what was weak once may be
   * strong now.
   */
  private static final int LATEST = 5;

  /** An area with less weakness than this is not offered first. */
  private static final double STRONG = 1.5;

  public TraineeProgress {
    results = List.copyOf(results);
  }

  /**
   * The latest exercises of an area.
   *
   * @param ratio mean of the minutes for each minute of the plan, over the gates that were put
   *     right
   */
  public record Area(String name, int exercises, int putRight, int slips, OptionalDouble ratio) {

    /**
     * How weak the trainee is in this area. A safety error weighs as much as a fault not found, and
     * that as much as twice the minutes.
     */
    double weakness() {
      return ratio.orElse(1) + 2.0 * (exercises - putRight + slips) / exercises;
    }

    public boolean weak() {
      return weakness() > STRONG;
    }
  }

  /** All areas, the weakest first. */
  public List<Area> areas() {
    Map<String, List<Result>> byArea = new LinkedHashMap<>();
    results.forEach(r -> byArea.computeIfAbsent(r.area(), a -> new ArrayList<>()).add(r));
    return byArea.entrySet().stream()
        .map(e -> area(e.getKey(), e.getValue()))
        .sorted(Comparator.comparingDouble((Area a) -> -a.weakness()).thenComparing(Area::name))
        .toList();
  }

  private static Area area(String name, List<Result> all) {
    List<Result> latest = all.subList(Math.max(0, all.size() - LATEST), all.size());
    return new Area(
        name,
        latest.size(),
        (int) latest.stream().filter(Result::putRight).count(),
        latest.stream().mapToInt(Result::slips).sum(),
        ratio(latest));
  }

  public List<Area> weak() {
    return areas().stream().filter(Area::weak).toList();
  }

  /** Minutes for each minute of the plan, on average over all gates that were put right. */
  public OptionalDouble ratio() {
    return ratio(results);
  }

  private static OptionalDouble ratio(List<Result> some) {
    return some.stream().filter(Result::putRight).mapToDouble(Result::ratio).average();
  }
}
