package yett.interview.event;

/**
 * An action of the desk about a call other than asking. It changes nothing that is known about the
 * gate.
 */
public enum Tending {
  /** The place of the gate, as the caller told it. */
  WHERE("it is at"),
  /** A child is on the telephone, and no grown-up. */
  CHILD("a child is on the telephone, and no grown-up"),
  GROWN_UP("a grown-up is on the telephone"),
  WORKS_AGAIN("it works again"),
  /** Somebody was sent; {@code due} says by when they should be there. */
  SENT("sent"),
  /** Emergency services were called: fire service, ambulance or police. */
  HELP_CALLED("help called"),
  NOT_REACHED("the caller could not be reached"),
  CANCELLED("called off"),
  /** Somebody at the desk took the call. */
  TAKEN("taken by"),
  GIVEN("given to"),
  CALL_BACK("call back"),
  ON_THE_WAY("on the way"),
  AT_THE_GATE("at the gate");

  private final String words;

  Tending(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
