package yett.saying;

/**
 * From which fit on something counts as said, tried on the sayings that may be looked at; see
 * docs/sayings.md.
 *
 * @param meaning what the meaning counts beside the words, 0 to 1
 * @param finding the least fit of a finding
 * @param danger the least fit of a danger; it rather asks once too often
 * @param behind how far a danger may fit worse than the best of all else that the clause may mean
 * @param torn what counts, 0 to 1, of what a few words tell of a danger far better than the whole
 *     of what was said
 */
record Calibration(double meaning, double finding, double danger, double behind, double torn) {
  static final Calibration WITH_MEANINGS = new Calibration(0.8, 0.35, 0.35, 0, 0.5);
  static final Calibration BY_WORDS = new Calibration(0, 0.4, 0.52, 0.06, 1);
}
