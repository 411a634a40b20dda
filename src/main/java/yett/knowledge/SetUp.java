package yett.knowledge;

import java.util.List;

/**
 * A state of the gate that checks and repairs need and that takes time to enter and to leave.
 *
 * @param within set-ups that are entered before it and left after it
 * @param excludes set-ups that cannot be in force at the same time
 * @param enter steps to confirm on the way in, in order
 * @param leave steps to confirm on the way out, in order
 * @param enterAgain the steps on the way in, each in a few words, for somebody who has just done
 *     them; the steps themselves where the card has no shorter ones
 * @param leaveAgain the same for the way out
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
    List<String> enterAgain,
    List<String> leaveAgain,
    String source)
    implements Card {

  public SetUp {
    enterAgain = enterAgain.isEmpty() ? enter : enterAgain;
    leaveAgain = leaveAgain.isEmpty() ? leave : leaveAgain;
  }

  /**
   * The set-up in which the gate is tried. A rule base without it tries the gate without a set-up.
   */
  public static final String GATE_RUNNING = "gate-running";

  /** The set-up in which the operator is powered and open. */
  public static final String COVER_OFF = "cover-off";

  /** The set-up in which the operator is locked off and proved dead. */
  public static final String LOCKED_OFF = "locked-off";

  /** The condition that the operator has power. */
  public static final String POWERED = "powered";

  /** The condition that nobody has switched off the mains. */
  public static final String MAINS_AS_FOUND = "mains-as-found";

  /** The condition that the operator's covers and guards are on. */
  public static final String COVERS_ON = "covers-on";

  /** The condition that the gate can run, watched or not. */
  public static final String ABLE_TO_RUN = "able-to-run";

  /** The set-up in which an unproved gate is left. A rule base without it leaves every set-up. */
  public static final String OUT_OF_USE = "out-of-use";

  /**
   * The set-up in which a gate that passed every proof is given back: barriers and notices are
   * removed. It ends the case and is not in force before; a rule base may have none.
   */
  public static final String IN_USE = "in-use";

  /**
   * Whether it has no steps to enter or leave; it then only says which other set-ups must not be in
   * force.
   */
  public boolean isCondition() {
    return enter.isEmpty() && leave.isEmpty();
  }
}
