package yett.record.handout;

import yett.interview.event.Ending;
import yett.interview.state.CaseState;

/**
 * How the work ended, as the owner of the gate has to know it.
 *
 * @param inUse whether the gate may be used
 */
record Outcome(String words, boolean inUse) {
  private static final String WAIT =
      " Nobody may run it until it has been proved and handed back to you.";

  static Outcome of(CaseState state) {
    if (state.closed().isEmpty()) {
      return new Outcome("The work is not finished." + WAIT, false);
    }
    Ending ending = state.closed().get();
    return switch (ending) {
      case REPAIRED ->
          new Outcome(
              "The gate is back in use. It was repaired and passed every safety test that it needs.",
              true);
      case NOTHING_FOUND ->
          new Outcome(
              "The gate is back in use. Nothing was wrong with the machine, and it passed every safety"
                  + " test that it needs.",
              true);
      case INSPECTED ->
          new Outcome("The gate was inspected and passed every safety test that it needs.", true);
      case WORKS_AGAIN ->
          new Outcome(
              "We were told that the gate runs again. None of our people has looked at it:"
                  + " watch its next runs from the side.",
              true);
      case CANCELLED, NOT_REACHED ->
          new Outcome("None of our people has looked at the gate." + WAIT, false);
      case SOLVED -> new Outcome("The gate runs again. Nothing had to be repaired.", true);
      case HANDED_OVER ->
          new Outcome("The work is not finished; somebody else goes on with it." + WAIT, false);
      case OUT_OF_SERVICE ->
          new Outcome("The gate is out of use, locked off and signed." + WAIT, false);
      case MADE_SAFE ->
          new Outcome("The work was stopped because of a danger to people." + WAIT, false);
    };
  }
}
