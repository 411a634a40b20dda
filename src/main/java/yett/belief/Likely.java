package yett.belief;

/**
 * Lists the beliefs about reported gates of one rule base. How far down the most probable sets of
 * causes reach is much the same from gate to gate, so each listing begins where the last one ended;
 * what is listed does not depend on it. Thread-safe.
 */
public final class Likely {
  private volatile int lowered;

  /** See {@link Belief#atReport(CausalModel)}. */
  public Belief atReport(CausalModel model) {
    return Belief.atReport(model, this);
  }

  /** How often the limit of the chances was lowered in the last listing; 0 before the first. */
  int lowered() {
    return lowered;
  }

  void lowered(int times) {
    lowered = times;
  }
}
