package yett.saying;

/**
 * Something that can be said about a gate.
 *
 * @param card id of the check, effect, history or pressing
 * @param outcome id of an outcome of the check; empty for any other kind
 */
public record Thing(Kind kind, String card, String outcome) {
  /** The kind of thing. */
  public enum Kind {
    DANGER,
    COMPLAINT,
    OUTCOME,
    /** A check for which the meant outcome is not clear. */
    CHECK,
    READING,
    EFFECT,
    HISTORY,
    /** A matter that makes a visit urgent. */
    PRESSING,
    /** Talk that says nothing about a gate. */
    NOTHING
  }

  static final Thing TALK = new Thing(Kind.NOTHING, "talk", "");
  static final Thing DENIAL = new Thing(Kind.NOTHING, "denial", "");

  String key() {
    return kind + "/" + card + "/" + outcome;
  }
}
