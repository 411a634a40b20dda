package yett.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.calculation.ForcePoint;
import yett.calculation.ObstructionForce;
import yett.calculation.ObstructionForce.Verdict;
import yett.interview.state.Forces;

/** Says what was measured of the force on an obstruction. */
public final class ForceWords {
  private ForceWords() {}

  /** Where it was measured: {@code gap 300 mm, at the middle}. */
  public static String place(Forces.Point point) {
    return "gap " + point.force().gap() + " mm, " + point.height().words();
  }

  public static String peak(ForcePoint force) {
    return Math.round(force.peak()) + " N";
  }

  public static String allowed(ForcePoint force) {
    return Math.round(force.zone().peakLimit()) + " N";
  }

  /** How long the force stayed above 150 N. */
  public static String above(ForcePoint force) {
    return Math.round(1000 * force.above()) + " ms";
  }

  public static String aboveAllowed() {
    return Math.round(1000 * ObstructionForce.DYNAMIC_PERIOD) + " ms";
  }

  public static String verdict(ForcePoint force) {
    return switch (force.verdict()) {
      case MET -> "within the limits";
      case MISSED -> "over the limits";
      case OPEN -> times(force);
    };
  }

  private static String times(ForcePoint force) {
    return "measured " + force.times() + " of " + ForcePoint.TIMES + " times";
  }

  /** The verdict, and how often it was measured if that was not often enough. */
  public static String judged(ForcePoint force) {
    return verdict(force) + tooFew(force);
  }

  private static String tooFew(ForcePoint force) {
    boolean few = force.verdict() == Verdict.MISSED && force.times() < ForcePoint.TIMES;
    return few ? ", " + times(force) : "";
  }

  /** The way of the leaf in a proof: closing or opening. */
  public static String way(String proof) {
    return Wording.spaced(proof).replace("reversal ", "");
  }

  /** Every point, what was over a limit before a repair, and how many points nobody measured. */
  public static List<String> lines(Forces forces) {
    List<String> lines = new ArrayList<>();
    forces
        .before()
        .forEach(p -> lines.add("Before the repair: " + way(p.proof()) + ", " + line(p)));
    forces.points().forEach(p -> lines.add(Wording.spaced(p.proof()) + ", " + line(p)));
    lines.addAll(gaps(forces));
    return lines;
  }

  /** What is missing: points to be measured again, and how many were not measured at all. */
  public static List<String> gaps(Forces forces) {
    List<String> gaps = new ArrayList<>();
    for (String proof : Forces.PROOFS.stream().sorted().toList()) {
      forces
          .owed(proof)
          .forEach(p -> gaps.add("Still to be measured again: " + way(proof) + ", " + place(p)));
      int made = forces.points(proof).size();
      if (made > 0 && made < Forces.POINTS) {
        gaps.add(
            Wording.capital(way(proof))
                + ": measured at "
                + made
                + " of "
                + Forces.POINTS
                + " points");
      }
    }
    return gaps;
  }

  /** The points of a proof that are over a limit; empty if none is. */
  public static Optional<String> over(Forces forces, String proof) {
    String points =
        forces.points(proof).stream()
            .filter(Forces.Point::isOver)
            .map(p -> figures(p) + tooFew(p.force()))
            .collect(Collectors.joining("; "));
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of("the measured force is over its limit: " + points);
  }

  /** The force that remained later on. */
  public static String left(double force) {
    return Math.round(force) + " N after 5 s (25 N allowed)";
  }

  /** Everything about a point in one line. */
  public static String line(Forces.Point point) {
    return figures(point) + ": " + judged(point.force());
  }

  private static String figures(Forces.Point point) {
    ForcePoint force = point.force();
    return place(point)
        + ": "
        + (force.times() > 1 ? "mean " : "")
        + peak(force)
        + " ("
        + allowed(force)
        + " allowed), above 150 N for "
        + above(force)
        + " ("
        + aboveAllowed()
        + " allowed)"
        + force.left().map(n -> ", " + left(n)).orElse("");
  }
}
