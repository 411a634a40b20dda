package yett.calculation;

/**
 * The values from low to high, both included, in the unit that the method giving it names.
 *
 * @throws IllegalArgumentException if low is above high or either is not a number
 */
public record Range(double low, double high) {
  public Range {
    if (!(low <= high)) {
      throw new IllegalArgumentException("low " + low + " must not be above high " + high);
    }
  }

  /** The range with both ends multiplied by a factor, for example to convert its unit. */
  public Range times(double factor) {
    return new Range(low * factor, high * factor);
  }

  public boolean contains(double value) {
    return value >= low && value <= high;
  }
}
