package yett.figures;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yett.calculation.Range;
import yett.calculation.SmallNumbers;

/**
 * Statistics over many cases, each figure with the range that remains open with so few cases.
 *
 * @param from beginning of the period
 * @param until its end
 * @param causes what was wrong in the cured cases, the most frequent first
 * @param sites gates with cases, the most frequent first
 * @param atOnce how many of the closed cases with a visit were cured at the first visit
 * @param repeated how many of the cured cases whose {@link #WATCHED} is over came back: the same
 *     cause at the same gate
 * @param repeats the gates and causes that came back
 * @param minutes minutes spent for each expected minute, over the cured visits
 * @param desks for each agent, how many of the calls that they held and that are over ended on the
 *     telephone; the agent with most calls comes first
 */
public record CaseFigures(
    Instant from,
    Instant until,
    int cases,
    List<Share> causes,
    List<Rate> sites,
    Rate all,
    Share atOnce,
    Share onTelephone,
    Share repeated,
    List<Repeat> repeats,
    Ratio minutes,
    List<Share> desks) {

  /** A settled choice: for how long after a repair the same fault counts as having come back. */
  public static final Duration WATCHED = Duration.ofDays(90);

  /** A settled choice: with fewer cases only their number is shown, no share. */
  public static final int FEW = 5;

  /**
   * A settled choice: for a shorter period no number for a year is computed, because a busy day is
   * not a busy year.
   */
  public static final Duration SHORT = Duration.ofDays(90);

  private static final double DAYS_OF_A_YEAR = 365.25;

  /** A share: this many of that many, with the range of the share. */
  public record Share(String name, int hits, int all) {
    /**
     * @throws IllegalArgumentException if the total is 0
     */
    public Range range() {
      return SmallNumbers.share(hits, all);
    }

    /** Whether there are too few cases to give a share. */
    public boolean isFew() {
      return all < FEW;
    }
  }

  /** A number in the whole period, and the number for a year. */
  public record Rate(String name, int count, double aYear, Range range) {}

  /** A cause that came back at a gate, with the cases in order. */
  public record Repeat(String site, String cause, List<PastCase> cases) {}

  /** The median of several ratios. */
  public record Ratio(int cases, double median, Range range) {}

  public static CaseFigures of(List<PastCase> cases, Instant from, Instant until) {
    double years = Math.max(1, Duration.between(from, until).toDays()) / DAYS_OF_A_YEAR;
    List<PastCase> cured = cases.stream().filter(PastCase::cured).toList();
    List<PastCase> visited = cases.stream().filter(PastCase::visited).toList();
    List<PastCase> closed = cases.stream().filter(c -> c.ending().isPresent()).toList();
    List<PastCase> watched =
        cured.stream().filter(c -> !c.opened().plus(WATCHED).isAfter(until)).toList();
    return new CaseFigures(
        from,
        until,
        cases.size(),
        counted(cured, PastCase::cause).entrySet().stream()
            .map(e -> new Share(e.getKey(), e.getValue(), cured.size()))
            .sorted(Comparator.comparing((Share s) -> -s.hits()).thenComparing(Share::name))
            .toList(),
        counted(cases, PastCase::site).entrySet().stream()
            .map(e -> rate(e.getKey(), e.getValue(), years))
            .sorted(Comparator.comparing((Rate r) -> -r.count()).thenComparing(Rate::name))
            .toList(),
        rate("all", cases.size(), years),
        share("at once", visited, PastCase::curedAtOnce),
        share("on the telephone", closed, c -> c.cured() && c.visits() == 0),
        share("repeated", watched, c -> CameBack.of(c, cases)),
        CameBack.all(cases),
        ratio(cured.stream().filter(c -> c.expected() > 0 && c.spent() > 0).toList()),
        desks(cases));
  }

  /** Whether the period is too short to give a number for a year. */
  public boolean isShort() {
    return Duration.between(from, until).compareTo(SHORT) < 0;
  }

  private static List<Share> desks(List<PastCase> cases) {
    Map<String, List<PastCase>> held =
        cases.stream()
            .filter(c -> c.desk().isPresent() && c.isCallOver())
            .collect(Collectors.groupingBy(c -> c.desk().get()));
    return held.entrySet().stream()
        .map(e -> share(e.getKey(), e.getValue(), PastCase::endedOnTelephone))
        .sorted(Comparator.comparing((Share s) -> -s.all()).thenComparing(Share::name))
        .toList();
  }

  private static Map<String, Integer> counted(List<PastCase> cases, Function<PastCase, String> by) {
    return cases.stream().collect(Collectors.toMap(by, c -> 1, Integer::sum));
  }

  private static Rate rate(String name, int count, double years) {
    Range range = SmallNumbers.mean(count);
    return new Rate(
        name, count, count / years, new Range(range.low() / years, range.high() / years));
  }

  private static Share share(String name, List<PastCase> cases, Predicate<PastCase> hit) {
    return new Share(name, (int) cases.stream().filter(hit).count(), cases.size());
  }

  private static Ratio ratio(List<PastCase> cases) {
    double[] ratios = cases.stream().mapToDouble(c -> c.spent() / c.expected()).toArray();
    return new Ratio(ratios.length, SmallNumbers.median(ratios), SmallNumbers.medianRange(ratios));
  }
}
