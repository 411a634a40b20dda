package yett.record.drawing;

/**
 * How much smaller a drawing is than the gate.
 *
 * @param one one millimetre on paper is so many at the gate
 */
record Scale(int one) {
  /** Scales of drawings after ISO 5455, and those between that drawing boards have. */
  private static final int[] USUAL = {10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 500};

  /** The largest usual one at which so many metres have room. */
  static Scale fitting(double metres, double millimetres) {
    for (int one : USUAL) {
      if (metres * 1000 / one <= millimetres) {
        return new Scale(one);
      }
    }
    return new Scale((int) Math.ceil(metres * 1000 / millimetres));
  }

  /** Millimetres on paper. */
  double onPaper(double metres) {
    return metres * 1000 / one;
  }

  @Override
  public String toString() {
    return "1 : " + one;
  }
}
