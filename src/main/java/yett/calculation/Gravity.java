package yett.calculation;

/** Standard gravity. */
final class Gravity {
  /** m/s2, exact; NIST SP 811, B.8. */
  static final double STANDARD = 9.80665;

  private Gravity() {}
}
