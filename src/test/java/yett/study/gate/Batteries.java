package yett.study.gate;

/**
 * Two 12 V blocks in series with their joints. Rest voltage on a straight line through the usual
 * chart of sealed blocks (12.0 V at a quarter, 12.8 V full); resistance of small blocks grows as
 * capacity is lost, when they are flat and in the cold (battery data sheets, from memory).
 */
final class Batteries {
  private static final double EMPTY_BLOCK = 11.75;
  private static final double SPAN_BLOCK = 1.08;

  /** Ah when new. */
  static final double RATED = 12;

  /** Share of the rated capacity that is left. */
  double health = 1;

  /** Share of the present capacity that is charged. */
  double charge = 1;

  boolean deadCell;
  double jointResistance = 0.0015;
  boolean crust;
  private final double temperature;

  Batteries(double temperature) {
    this.temperature = temperature;
  }

  /** V of the pair at rest. */
  double rest() {
    return 2 * (EMPTY_BLOCK + SPAN_BLOCK * charge) - (deadCell ? 1.9 : 0);
  }

  /** Ohm of the pair, without joints. */
  double resistance() {
    double flat = charge < 0.4 ? 1 + 2 * (0.4 - charge) / 0.4 : 1;
    double cold = 1 + 0.01 * Math.max(0, 25 - temperature);
    return 0.035 / Math.pow(health, 1.5) * flat * cold;
  }

  /** V at the controller while it takes a current (A). */
  double under(double current) {
    return rest() - current * (resistance() + jointResistance);
  }

  /** Lets so much charge (Ah) flow out. */
  void drain(double amperehours) {
    charge = Math.max(0, charge - amperehours / (RATED * health));
  }

  boolean worn() {
    return health < 0.55 || deadCell;
  }
}
