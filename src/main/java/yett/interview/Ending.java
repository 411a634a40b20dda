package yett.interview;

import java.util.stream.Stream;
import yett.knowledge.Cause;
import yett.knowledge.Repair;

/** How a case closes. */
public enum Ending {
  /** Repaired, and every proof passed. */
  REPAIRED("repaired and proved"),
  /** Nothing was mended because nothing was wrong with the machine, and every proof passed. */
  NOTHING_FOUND("proved, with nothing wrong found"),
  /** Runs again after something that a caller may do; nothing was mended that needs proofs. */
  SOLVED("solved on the telephone"),
  /** Inspected, and every proof passed. */
  INSPECTED("inspected"),
  /** Handed to the next level. */
  HANDED_OVER("handed over"),
  /** Left locked off and signed. */
  OUT_OF_SERVICE("left out of service"),
  /** Runs again without anybody from here; what was wrong was not found out. */
  WORKS_AGAIN("works again"),
  /** Whoever called does not want anybody any more. */
  CANCELLED("called off"),
  /** Nobody answers the number any more, and nothing is known of a danger. */
  NOT_REACHED("caller not reached"),
  /** Ended by a danger to people. */
  MADE_SAFE("stopped for safety");

  private final String words;

  Ending(String words) {
    this.words = words;
  }

  /**
   * How a gate is given back that passed every proof.
   *
   * @param repairs all that were done
   */
  public static Ending proved(Stream<Repair> repairs) {
    return repairs.allMatch(r -> r.removes().containsKey(Cause.NOTHING_WRONG))
        ? NOTHING_FOUND
        : REPAIRED;
  }

  /** Whether the gate is back in use and nothing is left to do. */
  public boolean isDone() {
    return isProved() || this == SOLVED || this == WORKS_AGAIN;
  }

  /** Whether what was reported is over, by what was done here. */
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
