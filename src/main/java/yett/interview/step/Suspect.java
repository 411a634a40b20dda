package yett.interview.step;

import java.util.Optional;
import yett.knowledge.Cause;
import yett.knowledge.Repair;

/**
 * A cause that may still be present, with what this person could do about it. "Nothing is wrong
 * with the machine" can be one: then that is explained, the gate proved and left.
 *
 * @param chance that it is present now
 * @param repair the open repair that removes it most surely; empty if none is open
 */
public record Suspect(Cause cause, double chance, Optional<Repair> repair) {
  private static final double TO_FIT = 0.1;

  /**
   * Whether this person may try the repair without knowing more. A part is fitted only if the cause
   * has a chance of at least one in ten: a needless part costs money, disturbs what is sound, and
   * hides what was wrong.
   */
  public boolean worthTrying() {
    return repair.isPresent() && (repair.get().parts().isEmpty() || chance >= TO_FIT);
  }
}
