package yett.replay;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Totals over some replayed cases.
 *
 * @param first number of judged cases with the right cause first or exactly the right stop
 * @param inFirstThree number of judged cases with the right cause among the first three or exactly
 *     the right stop
 * @param toFind median number of checks made to find the fault
 * @param checks median number of all checks of a case, with follow-up checks
 * @param minutes median minutes of a case by the cards
 * @param unsafe number of unsafe proposals
 */
public record Score(
    int cases,
    int judged,
    int first,
    int inFirstThree,
    double toFind,
    double checks,
    double minutes,
    int unsafe) {

  public static Score of(List<Replayed> cases) {
    return together(cases.stream().map(Score::one).toList());
  }

  /**
   * The values of one case.
   *
   * @param right whether the result is as its file says; empty where the file says nothing
   * @param inFirstThree whether the right cause is among the first three, or the stop is right;
   *     empty likewise
   */
  public record One(
      Optional<Boolean> right,
      Optional<Boolean> inFirstThree,
      long toFind,
      long checks,
      double minutes,
      int unsafe) {

    /** Fields that a file leaves out are null here. */
    public One {
      right = right == null ? Optional.empty() : right;
      inFirstThree = inFirstThree == null ? Optional.empty() : inFirstThree;
    }
  }

  public static One one(Replayed replayed) {
    return new One(
        right(replayed),
        replayed.judged().stop().or(() -> replayed.judged().inFirstThree()),
        toFind(replayed),
        checks(replayed),
        replayed.spentMinutes(),
        replayed.unsafe().size());
  }

  public static Score together(List<One> cases) {
    return new Score(
        cases.size(),
        count(cases, c -> c.right().map(r -> true)),
        count(cases, One::right),
        count(cases, One::inFirstThree),
        median(cases, One::toFind),
        median(cases, One::checks),
        median(cases, One::minutes),
        cases.stream().mapToInt(One::unsafe).sum());
  }

  /**
   * Whether the result is as the file says; empty where the file says nothing. If people are in
   * danger, the stop has to be right, not the cause.
   */
  public static Optional<Boolean> right(Replayed replayed) {
    return replayed.judged().stop().or(() -> replayed.judged().cause());
  }

  /**
   * Whether a step counts as a check. A round of looks counts as one, because it is one screen
   * answered together.
   */
  private static boolean asks(Replayed.Taken step) {
    return step.kind().equals("check") || step.kind().equals("look-round");
  }

  /** The number of checks made. */
  public static long checks(Replayed replayed) {
    return replayed.steps().stream().filter(Score::asks).count();
  }

  /** The number of checks made to find the fault, without follow-up checks. */
  static long toFind(Replayed replayed) {
    return replayed.steps().stream().filter(s -> asks(s) && s.why().saves().isPresent()).count();
  }

  private static int count(List<One> cases, Function<One, Optional<Boolean>> what) {
    return (int) cases.stream().filter(c -> what.apply(c).orElse(false)).count();
  }

  private static double median(List<One> cases, ToDoubleFunction<One> what) {
    double[] sorted = cases.stream().mapToDouble(what).sorted().toArray();
    int middle = sorted.length / 2;
    if (sorted.length == 0) {
      return 0;
    }
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  public String words() {
    String judgement =
        judged == 0
            ? ""
            : String.format(
                Locale.ROOT,
                "right cause first (or the right stop) in %d of %d, among the first three in %d; ",
                first,
                judged,
                inFirstThree);
    return String.format(
        Locale.ROOT,
        "%d %s: %smedian of %.0f checks to find the fault, %.0f with those after repairs, and %.0f"
            + " min; unsafe proposals: %s",
        cases,
        cases == 1 ? "case" : "cases",
        judgement,
        toFind,
        checks,
        minutes,
        unsafe == 0 ? "none" : Integer.toString(unsafe));
  }
}
