package yett.knowledge;

import java.util.List;

/**
 * A state of the work that checks and repairs need and that costs time to enter and to leave.
 *
 * @param within set-ups that are entered before it and left after it
 * @param excludes set-ups that cannot be in force at the same time
 * @param enter steps to confirm on the way in, in order
 * @param leave steps to confirm on the way out, in order
 */
public record SetUp(
    String id,
    String name,
    double enterMinutes,
    double leaveMinutes,
    Role who,
    List<String> hazards,
    List<String> within,
    List<String> excludes,
    List<String> enter,
    List<String> leave,
    String source)
    implements Card {

  /** The set-up in which the gate is tried; a rule base that lacks it tries without one. */
  public static final String GATE_RUNNING = "gate-running";

  /** The set-up in which the operator is powered and open. */
  public static final String COVER_OFF = "cover-off";

  /** The set-up in which the operator is locked off and proved dead. */
  public static final String LOCKED_OFF = "locked-off";

  /** The condition of mains that nobody has switched off. */
  public static final String MAINS_AS_FOUND = "mains-as-found";

  /** The condition of an operator whose covers and guards are on. */
  public static final String COVERS_ON = "covers-on";

  /** The condition of a gate that can run, whoever watches. */
  public static final String ABLE_TO_RUN = "able-to-run";

  /**
   * The set-up in which a gate is left that is not proved; a rule base that lacks it leaves all.
   */
  public static final String OUT_OF_USE = "out-of-use";

  /**
   * The state in which a gate is given back that passed every proof: what kept people away goes. It
   * ends the case and is not in force before; a rule base may lack it.
   */
  public static final String IN_USE = "in-use";

  /**
   * Whether there is nothing to do on the way in or out: then it only says which other set-ups must
   * not be in force.
   */
  public boolean isCondition() {
    return enter.isEmpty() && leave.isEmpty();
  }
}
