package yett.record.drawing;

/**
 * The scale of a drawing.
 *
 * @param one how many millimetres at the gate are one millimetre on paper
 */
record Scale(int one) {
  /** The scales of ISO 5455, and intermediate ones that scale rulers have. */
  private static final int[] USUAL = {10, 20, 25, 50, 75, 100, 125, 150, 200, 250, 500};

  /** The largest usual scale at which this many metres fit into this many millimetres. */
  static Scale fitting(double metres, double millimetres) {
    for (int one : USUAL) {
      if (metres * 1000 / one <= millimetres) {
        return new Scale(one);
      }
    }
    return new Scale((int) Math.ceil(metres * 1000 / millimetres));
  }

  /** Length on paper, in millimetres. */
  double onPaper(double metres) {
    return metres * 1000 / one;
  }

  @Override
  public String toString() {
    return "1 : " + one;
  }
}
