package yett.belief;

/**
 * Lists the beliefs about reported gates of one rule base. How probable a set of causes has to be
 * to be listed is much the same from gate to gate, so each listing begins where the last one ended;
 * what is listed does not depend on it. Thread-safe.
 */
public final class Likely {
  private volatile double least;

  /** See {@link Belief#atReport(CausalModel)}. */
  public Belief atReport(CausalModel model) {
    return Belief.atReport(model, this);
  }

  /**
   * The chance of the least probable set of the last listing, given that some cause is present; 0
   * before the first.
   */
  double least() {
    return least;
  }

  void least(double chance) {
    least = chance;
  }
}
