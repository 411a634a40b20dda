package yett.wording;

import yett.calculation.ForcePoint;
import yett.calculation.ObstructionForce;
import yett.interview.Forces;

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
      case OPEN -> "measured " + force.times() + " of " + ForcePoint.TIMES + " times";
    };
  }

  /** The force that remained later on. */
  public static String left(double force) {
    return Math.round(force) + " N after 5 s (25 N allowed)";
  }

  /** Everything about a point in one line. */
  public static String line(Forces.Point point) {
    ForcePoint force = point.force();
    return place(point)
        + ": "
        + peak(force)
        + " ("
        + allowed(force)
        + " allowed), above 150 N for "
        + above(force)
        + " ("
        + aboveAllowed()
        + " allowed)"
        + force.left().map(n -> ", " + left(n)).orElse("")
        + ": "
        + verdict(force);
  }
}
