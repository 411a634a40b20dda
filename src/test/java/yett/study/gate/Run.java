package yett.study.gate;

/**
 * What one command led to.
 *
 * @param end how it ended
 * @param place share of the way at which it stopped
 * @param error m from the taught limit, positive too far
 * @param seconds from start to stop
 */
record Run(End end, double place, double error, double seconds) {
  enum End {
    ARRIVED,
    DARK,
    IGNORED,
    TOO_WEAK,
    MOTOR_DEAD,
    MOTOR_ONLY,
    SPROCKET_ONLY,
    LOST_POSITION,
    OBSTRUCTION,
    BEAM,
    EDGE,
    FROZE
  }

  boolean arrived() {
    return end == End.ARRIVED;
  }

  boolean turnedBack() {
    return end == End.OBSTRUCTION || end == End.BEAM || end == End.EDGE;
  }

  boolean moved() {
    return arrived() || turnedBack() || end == End.LOST_POSITION || end == End.FROZE;
  }
}
