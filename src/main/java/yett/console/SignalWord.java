package yett.console;

/** The signal words of ANSI Z535.6, gravest first. */
public enum SignalWord {
  /** Will kill or badly hurt if not avoided. */
  DANGER,
  /** Could kill or badly hurt if not avoided. */
  WARNING,
  /** Could hurt somewhat if not avoided. */
  CAUTION,
  /** About damage to things, not harm to people. */
  NOTICE
}
