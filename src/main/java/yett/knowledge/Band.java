package yett.knowledge;

/** The readings that count as one outcome: from {@code low} up to {@code high}. */
public record Band(Limit low, Limit high) {

  /** One end of a band. */
  public sealed interface Limit {}

  /** No limit on this side. */
  public enum Unbounded implements Limit {
    BELOW,
    ABOVE
  }

  /** A fixed reading, in the canonical unit. */
  public record Fixed(double value) implements Limit {}

  /**
   * A multiple of the low or high end of the usual range that the rules compute for the gate.
   *
   * @param high whether it is the high end
   */
  public record Expected(double factor, boolean high) implements Limit {}

  /** Whether the band depends on the usual range that the rules compute. */
  public boolean relative() {
    return low instanceof Expected || high instanceof Expected;
  }
}
