package yett.desk;

import java.time.LocalDate;
import java.util.Map;
import yett.interview.Answer;
import yett.knowledge.InspectionKind;

/**
 * An inspection of which there is only a paper: the gate passed it, and these things were read.
 *
 * @param readings by check
 */
public record PastVisit(
    String gate, LocalDate day, InspectionKind kind, Map<String, Answer.Read> readings) {
  public PastVisit {
    readings = Map.copyOf(readings);
  }

  /** The same visit with what was read. */
  public PastVisit with(Map<String, Answer.Read> read) {
    return new PastVisit(gate, day, kind, read);
  }
}
