package yett.study.gate;

/** The free run of chain: a parabola between bracket and idler. */
final class Chain {
  static final double PITCH = 0.0127;

  /** N/m, half-inch chain of 0.61 kg/m. */
  static final double WEIGHT = 6.0;

  final double span;

  /** m of chain more than the straight line. */
  double extra;

  /** Growth by wear, per cent. */
  double wear;

  /** m between the planes of sprocket and bracket. */
  double offset;

  boolean padMoved;
  boolean joined = true;
  boolean nutsBackedOff;
  boolean nutsUsedUp;
  boolean idlerSeized;

  Chain(double span) {
    this.span = span;
    hang(0.013 * span);
  }

  /** Takes up or lets out chain until it hangs so far (m): d = 8 s²/(3 L). */
  void hang(double sag) {
    extra = 8 * sag * sag / (3 * span);
  }

  /** m below the straight line. */
  double sag() {
    return Math.sqrt(3 * span * extra / 8);
  }

  /** N along the run: H = w L²/(8 s). */
  double tension() {
    return WEIGHT * span * span / (8 * Math.max(0.002, sag()));
  }

  /** m by which the middle can be pushed up and down: the same length as two straight lines. */
  double movement() {
    return 2 * Math.sqrt(extra * span / 2);
  }

  /** N that idlers, bent links and rubbing side plates take. */
  double friction() {
    double idlers = idlerSeized ? 60 : 0; // the chain slides over a rim that stands still
    return 0.12 * tension() + 3000 * Math.max(0, offset - 0.004) + 8 * wear + idlers;
  }

  boolean slack() {
    return joined && sag() > 0.0205 * span;
  }

  boolean tight() {
    return joined && sag() < 0.0065 * span;
  }

  /** Whether it rides up the teeth when it is pulled hard. */
  boolean climbs() {
    return sag() > 0.034 * span || wear > 2.6 || offset > 0.025;
  }
}
