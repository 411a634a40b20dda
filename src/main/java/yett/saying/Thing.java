package yett.saying;

/**
 * Something that can be told of a gate.
 *
 * @param card id of the check, effect, history or pressing
 * @param outcome id of an outcome of the check; empty for any other kind
 */
public record Thing(Kind kind, String card, String outcome) {
  /** What something told may be about. */
  public enum Kind {
    DANGER,
    COMPLAINT,
    OUTCOME,
    /** A check of which it is not clear which outcome is meant. */
    CHECK,
    READING,
    EFFECT,
    HISTORY,
    /** What makes a visit urgent. */
    PRESSING,
    /** Talk that tells nothing of a gate. */
    NOTHING
  }

  static final Thing TALK = new Thing(Kind.NOTHING, "talk", "");
  static final Thing DENIAL = new Thing(Kind.NOTHING, "denial", "");

  String key() {
    return kind + "/" + card + "/" + outcome;
  }
}
