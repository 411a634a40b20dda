package yett.replay;

import java.time.Instant;
import yett.interview.Expertise;
import yett.interview.Interview;

/**
 * Runs a recorded case: the tool asks in its own order, the file answers. The same case with the
 * same rule base gives the same result. May be used by several threads at once.
 */
public final class Replayer {
  private final Expertise expertise;
  private final Instant start;
  private final boolean beliefs;

  public Replayer(Expertise expertise) {
    this(expertise, Instant.EPOCH);
  }

  /**
   * @param start when the case is taken to be opened; minutes of the cards pass from there
   */
  public Replayer(Expertise expertise, Instant start) {
    this(expertise, start, true);
  }

  private Replayer(Expertise expertise, Instant start, boolean beliefs) {
    this.expertise = expertise;
    this.start = start;
    this.beliefs = beliefs;
  }

  /**
   * The same with what was believed after each step and which answers hardly fit together left out,
   * which takes a third of the time: for whoever only reads what was done and how cases end.
   */
  public Replayer withoutBeliefs() {
    return new Replayer(expertise, start, false);
  }

  /** Runs a case from the first question to the closing. */
  public Replayed run(RecordedCase recorded) {
    return run(recorded, new Witness(recorded, expertise.base()));
  }

  /** The same, with the checks answered by somebody else than the file. */
  public Replayed run(RecordedCase recorded, Respondent respondent) {
    try (Interview interview =
        beliefs ? expertise.newInterview() : expertise.newInterviewWithoutConflicts()) {
      return new Run(
              interview, recorded, respondent, start, new Transcript(expertise.base(), beliefs))
          .run();
    }
  }
}
