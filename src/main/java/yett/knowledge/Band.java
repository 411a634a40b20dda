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

  /** A multiple of the low or high end of the expectation that the rules compute for the gate. */
  public record Expected(double factor, boolean high) implements Limit {}

  /** Whether the band can only be placed once the rules have computed an expectation. */
  public boolean relative() {
    return low instanceof Expected || high instanceof Expected;
  }
}
