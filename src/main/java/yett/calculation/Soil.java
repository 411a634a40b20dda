package yett.calculation;

/**
 * Resistivity of common soils, ohm m: what is usual and the range that was found. Sources: National
 * Bureau of Standards technical report 108 for fill, clay and gravel; a published earthing table
 * for bog, moist sand and rock. A reading on the spot beats any table.
 */
public enum Soil {
  BOG("bog, marsh", 30, 2, 50),
  FILL("ashes, cinders, brine waste", 23.7, 5.9, 70),
  CLAY("clay, shale, loam", 40.6, 3.4, 163),
  CLAY_WITH_SAND("clay or loam with sand and gravel", 158, 10.2, 1350),
  MOIST_SAND("moist sand", 200, 50, 3000),
  GRAVEL("gravel, sand, stones, little clay", 940, 590, 4580),
  ROCK("rocky ground", 2000, 100, 8000);

  private final String words;
  private final double usual;
  private final Range range;

  Soil(String words, double usual, double low, double high) {
    this.words = words;
    this.usual = usual;
    this.range = new Range(low, high);
  }

  public String words() {
    return words;
  }

  /** ohm m. */
  public double usual() {
    return usual;
  }

  /** ohm m. */
  public Range range() {
    return range;
  }
}
