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
 * What many cases tell together, each figure with the range that so few cases leave open.
 *
 * @param from beginning of the time that is looked at
 * @param until its end
 * @param causes of the cured cases, what was wrong, the most frequent first
 * @param sites where there were cases, the most frequent first
 * @param atOnce of the closed cases with a visit, how many the first visit cured
 * @param repeated of the cured cases whose {@link #WATCHED} is over, how many came back: the same
 *     cause at the same gate
 * @param repeats the gates and causes that came back
 * @param minutes of the cured visits, the minutes spent for each expected minute
 * @param desks for each person of the desk, of the closed calls that they held, how many were over
 *     on the telephone; who held most comes first
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

  /** A settled choice: how long a repair is watched for the same fault. */
  public static final Duration WATCHED = Duration.ofDays(90);

  /** A settled choice: from fewer cases no share is told, their number only. */
  public static final int FEW = 5;

  /**
   * A settled choice: what came about in less time is not made into a number a year, because a busy
   * day is no year.
   */
  public static final Duration SHORT = Duration.ofDays(90);

  private static final double DAYS_OF_A_YEAR = 365.25;

  /** So many of so many; the range is that of the share. */
  public record Share(String name, int hits, int all) {
    /**
     * @throws IllegalArgumentException if there is nothing to have a share of
     */
    public Range range() {
      return SmallNumbers.share(hits, all);
    }

    /** Whether they are too few to speak of a share. */
    public boolean isFew() {
      return all < FEW;
    }
  }

  /** So many in the whole time, and how many in a year. */
  public record Rate(String name, int count, double aYear, Range range) {}

  /** A cause that came back at a gate, with its cases in order. */
  public record Repeat(String site, String cause, List<PastCase> cases) {}

  /** The median of some ratios. */
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
        desks(closed));
  }

  /** Whether the time that is looked at is too short to speak of a year. */
  public boolean isShort() {
    return Duration.between(from, until).compareTo(SHORT) < 0;
  }

  private static List<Share> desks(List<PastCase> closed) {
    Map<String, List<PastCase>> held =
        closed.stream()
            .filter(c -> c.desk().isPresent())
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
