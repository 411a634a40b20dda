package yett.calculation;

/**
 * One moment of a recorded force.
 *
 * @param time s, from wherever the recorder counts
 * @param force N
 * @throws IllegalArgumentException if either is not finite
 */
public record ForceSample(double time, double force) {
  public ForceSample {
    Require.finite("time", time);
    Require.finite("force", force);
  }
}
