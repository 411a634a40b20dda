package yett.interview;

/** What a desk does about a call besides asking: it changes nothing that is known of the gate. */
public enum Tending {
  /** Where the gate is, as the caller said it. */
  WHERE("it is at"),
  WORKS_AGAIN("it works again"),
  /** Somebody was sent; due says by when they should be there. */
  SENT("sent"),
  /** Help was called: fire service, ambulance, police. */
  HELP_CALLED("help called"),
  NOT_REACHED("the caller could not be reached"),
  CANCELLED("called off"),
  /** Somebody at the desk holds the call. */
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
