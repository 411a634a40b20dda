package yett.calculation;

/**
 * A rectangular wire loop in the ground that senses vehicles. Sides, radius and pitch in m,
 * inductance in uH, resistance in ohm, frequency in Hz.
 */
public final class VehicleLoop {
  /** μ0/π in uH/m. */
  private static final double MU0_OVER_PI = 0.4;

  /**
   * Usual inductance (uH) of gate loops with their lead-in. Detectors tune from 20 to 1000 uH;
   * outside the usual range, turns are shorted or too many. From memory.
   */
  public static final Range USUAL = new Range(50, 500);

  /** Upper end (uH) of many detectors' tuning range: from memory. */
  public static final double TUNES_UP_TO = 1000;

  private static final double FOOT = 0.3048;

  /**
   * Inductance of twisted lead-in (uH/m), from 0.22 uH/ft: detector handbook of the US highway
   * agency, from memory.
   */
  private static final double LEAD_IN = 0.22 / FOOT;

  private VehicleLoop() {}

  /**
   * Inductance (uH) of N turns: N L1(r) + 2 Σ (N - k) M(k p), with the inductance L1 of one turn of
   * round wire of radius r and the mutual one M of two turns k p apart. Textbook (Grover,
   * Inductance Calculations), for thin wire with no steel nearby; reinforcement lowers it.
   *
   * @param radius of the copper
   * @param pitch from turn to turn in the slot
   * @throws IllegalArgumentException if an argument is not positive, or the turns do not
   *     {@linkplain #hasRoom have room}
   */
  public static double inductance(
      double length, double width, int turns, double radius, double pitch) {
    Require.positive("length", length);
    Require.positive("width", width);
    Require.positive("turns", turns);
    Require.positive("wire radius", radius);
    Require.positive("pitch", pitch);
    if (!hasRoom(length, width, turns, pitch)) {
      throw new IllegalArgumentException("sides too short for " + turns + " turns");
    }
    double sum = turns * oneTurn(length, width, radius);
    for (int apart = 1; apart < turns; apart++) {
      sum += 2 * (turns - apart) * oneTurn(length, width, apart * pitch);
    }
    return sum;
  }

  /**
   * Whether the sides are over ten times longer than the stack of turns is deep, as the formula
   * needs.
   */
  public static boolean hasRoom(double length, double width, int turns, double pitch) {
    return Math.min(length, width) > 10 * turns * pitch;
  }

  private static double oneTurn(double x, double y, double r) {
    double g = Math.hypot(x, y);
    return MU0_OVER_PI
        * (x * Math.log(2 * x / r)
            + y * Math.log(2 * y / r)
            + 2 * g
            - x * arsinh(x / y)
            - y * arsinh(y / x)
            - 2 * (x + y));
  }

  private static double arsinh(double x) {
    return Math.log(x + Math.sqrt(x * x + 1));
  }

  /**
   * Rule of thumb (uH): (P/4)(N² + N), perimeter P in <em>feet</em>. Loop trade, from memory;
   * within 20 % for 2 to 5 turns.
   *
   * @param perimeter m
   * @throws IllegalArgumentException if an argument is not positive
   */
  public static double quickInductance(double perimeter, int turns) {
    Require.positive("turns", turns);
    return Require.positive("perimeter", perimeter) / FOOT / 4 * (turns * turns + turns);
  }

  /**
   * Inductance (uH) of a twisted lead-in of a length (m).
   *
   * @throws IllegalArgumentException if the length is negative
   */
  public static double leadIn(double length) {
    return LEAD_IN * Require.notNegative("lead-in", length);
  }

  /**
   * Quality factor 2 π f L/R of a loop with its lead-in.
   *
   * @throws IllegalArgumentException if an argument is not positive
   */
  public static double quality(double microhenry, double resistance, double frequency) {
    Require.positive("frequency", frequency);
    Require.positive("inductance", microhenry);
    return 2 * Math.PI * frequency * microhenry * 1e-6 / Require.positive("resistance", resistance);
  }

  /**
   * Height (m) up to which the loop detects a vehicle's underside: two thirds of the shorter side,
   * common practice.
   *
   * @throws IllegalArgumentException if a side is not positive
   */
  public static double height(double length, double width) {
    Require.positive("length", length);
    return 2 * Math.min(length, Require.positive("width", width)) / 3;
  }

  /**
   * Distance (m) to keep between the loop and the moving leaf: the larger of two thirds of the
   * shorter side and 3 ft. Published loop installation guide.
   *
   * @throws IllegalArgumentException if a side is not positive
   */
  public static double clearance(double length, double width) {
    return Math.max(height(length, width), 3 * FOOT);
  }
}
