package yett.saying;

/**
 * Thresholds from which a fit counts as said. They were tuned on the sayings that may be looked at;
 * see docs/sayings.md.
 *
 * @param meaning weight of the meaning relative to the words, 0 to 1
 * @param finding least fit of a finding
 * @param danger least fit of a danger, so low that a danger is asked about too often rather than
 *     missed
 * @param behind by how much a danger may fit worse than the best other meaning of the clause
 */
record Calibration(double meaning, double finding, double danger, double behind) {
  static final Calibration WITH_MEANINGS = new Calibration(0.8, 0.35, 0.35, -0.02);
  static final Calibration BY_WORDS = new Calibration(0, 0.4, 0.52, 0.05);
}
