package yett.desk;

import java.time.LocalDate;
import java.util.Map;
import yett.interview.event.Answer;
import yett.knowledge.InspectionKind;

/**
 * An inspection that is known only from paper: the gate passed it with these readings.
 *
 * @param readings by check
 */
public record PastVisit(
    String gate, LocalDate day, InspectionKind kind, Map<String, Answer.Read> readings) {
  public PastVisit {
    readings = Map.copyOf(readings);
  }

  /** The same visit with other readings. */
  public PastVisit with(Map<String, Answer.Read> read) {
    return new PastVisit(gate, day, kind, read);
  }
}
