package yett.interview.event;

import java.util.stream.Stream;
import yett.knowledge.Repair;

/** How a case closes. */
public enum Ending {
  /** Repaired, and every proof passed. */
  REPAIRED("repaired and proved"),
  /**
   * Nothing was repaired because nothing was wrong with the machine, which may have been held on
   * purpose, and every proof passed.
   */
  NOTHING_FOUND("proved, with nothing wrong found"),
  /** The gate runs again after a repair that a caller may do and that needs no proofs. */
  SOLVED("solved on the telephone"),
  /** Inspected, and every proof passed. */
  INSPECTED("inspected"),
  /** Handed to the next level. */
  HANDED_OVER("handed over"),
  /** Left locked off and signed. */
  OUT_OF_SERVICE("left out of use"),
  /** The gate runs again without work by us; the cause is unknown. */
  WORKS_AGAIN("works again"),
  /** The caller no longer wants a visit. */
  CANCELLED("called off"),
  /** The caller can no longer be reached, and no danger is known. */
  NOT_REACHED("caller not reached"),
  /** Ended by a danger to people, which was made safe. */
  MADE_SAFE("stopped for safety");

  private final String words;

  Ending(String words) {
    this.words = words;
  }

  /**
   * How the case ends for a gate that passed every proof.
   *
   * @param repairs all that were done
   */
  public static Ending proved(Stream<Repair> repairs) {
    return repairs.allMatch(Repair::leavesTheMachine) ? NOTHING_FOUND : REPAIRED;
  }

  /** Whether the gate is back in use and nothing is left to do. */
  public boolean isDone() {
    return isProved() || this == SOLVED || this == WORKS_AGAIN;
  }

  /** Whether the fault was cured by what was done here. */
  public boolean isCured() {
    return this == REPAIRED || this == NOTHING_FOUND || this == SOLVED;
  }

  /** Whether every proof that the gate needs has passed. */
  public boolean isProved() {
    return this == REPAIRED || this == NOTHING_FOUND || this == INSPECTED;
  }

  public String words() {
    return words;
  }
}
