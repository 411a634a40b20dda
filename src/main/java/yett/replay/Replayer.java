package yett.replay;

import java.time.Instant;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;

/**
 * Runs a recorded case: the tool asks in its own order, the file answers. The same case with the
 * same rule base gives the same result. Thread-safe.
 */
public final class Replayer {
  private final Expertise expertise;
  private final Instant start;
  private final boolean beliefs;

  public Replayer(Expertise expertise) {
    this(expertise, Instant.EPOCH);
  }

  /**
   * Runs cases with a rule base.
   *
   * @param start time at which each case is opened; the minutes of the cards are added to it
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

  /** Runs a case whose checks are answered by a respondent instead of the file. */
  public Replayed run(RecordedCase recorded, Respondent respondent) {
    try (Interview interview =
        beliefs ? expertise.newInterview() : expertise.newInterviewWithoutConflicts()) {
      return new Run(
              interview, recorded, respondent, start, new Transcript(expertise.base(), beliefs))
          .run();
    }
  }
}
