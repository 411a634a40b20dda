package yett.interview.step;

import java.util.Optional;
import yett.knowledge.Repair;

/**
 * Why a check or a repair comes up now.
 *
 * @param after the repair that makes it necessary; empty for any other kind
 */
public record Occasion(Kind kind, Optional<Repair> after) {

  /** The kind of reason. */
  public enum Kind {
    /** It is worth more than any other work that is left. */
    WORTH,
    /** The person asked for it. */
    ASKED_FOR,
    /** A completed repair makes it necessary. */
    AFTER_REPAIR,
    /** Something that happened makes it necessary before anything runs the gate. */
    BEFORE_RUN,
    /** It has to pass before the gate returns to service. */
    PROOF,
    /** It belongs to the inspection of the gate. */
    INSPECTION,
    /** A proof failed, and this is what it points to. */
    FAILED_PROOF,
    /** Nothing is left to ask, and it costs nothing to try. */
    LAST_TRY,
    /** The gate runs; this looks for what caused the fault. */
    BEHIND,
    /** The gate runs; this keeps the fault from coming back. */
    LASTING
  }

  /** Whether it serves to find a cause, not to confirm work that was done. */
  public boolean looksForCause() {
    return kind != Kind.PROOF && kind != Kind.AFTER_REPAIR;
  }

  public static Occasion of(Kind kind) {
    return new Occasion(kind, Optional.empty());
  }

  public static Occasion after(Repair repair) {
    return new Occasion(Kind.AFTER_REPAIR, Optional.of(repair));
  }
}
