package yett.console;

/** The signal words of ANSI Z535.6, gravest first. */
public enum SignalWord {
  /** A hazard that will kill or badly injure if not avoided. */
  DANGER,
  /** A hazard that could kill or badly injure if not avoided. */
  WARNING,
  /** A hazard that could injure lightly if not avoided. */
  CAUTION,
  /** About damage to things, not injury to people. */
  NOTICE
}
