package yett.interview;

import java.util.Optional;
import yett.knowledge.Repair;

/**
 * Why a check or a repair comes up now.
 *
 * @param after the repair that entails it; empty for any other kind
 */
public record Occasion(Kind kind, Optional<Repair> after) {

  /** What makes it come up. */
  public enum Kind {
    /** It is worth most of all that is left. */
    WORTH,
    /** The person asked for it. */
    ASKED_FOR,
    /** A repair that was done entails it. */
    AFTER_REPAIR,
    /** It has to pass before the gate returns to service. */
    PROOF,
    /** The gate is inspected, and it belongs to that. */
    INSPECTION,
    /** A proof failed, and this is what it points to. */
    FAILED_PROOF,
    /** Nothing is left to ask, and it costs nothing to try. */
    LAST_TRY,
    /** The gate runs; what may lie behind the fault is looked for. */
    BEHIND,
    /** The gate runs; the fault is kept from coming back. */
    LASTING
  }

  /** Whether it is to find a cause, rather than to see that what was done holds. */
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
