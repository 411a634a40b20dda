package yett.command.knowledge;

import java.util.Optional;
import yett.knowledge.RuleBase;

/** Remarks on a version that was not raised: cases could not tell which cards they went by. */
final class SameVersion {
  private SameVersion() {}

  /** What to do if two rule bases differ and both call themselves the same; empty otherwise. */
  static Optional<String> remark(RuleBase first, RuleBase second) {
    boolean alike =
        first.versions().equals(second.versions())
            && !first.fingerprint().equals(second.fingerprint());
    return alike && !first.versions().isEmpty()
        ? Optional.of(
            "Both call themselves "
                + String.join(", ", second.versions())
                + ". Raise the version before anybody gets the changed cards.")
        : Optional.empty();
  }
}
