package yett.dispatch;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import yett.interview.CaseState;
import yett.interview.Event;
import yett.knowledge.Pressing;
import yett.knowledge.Pressing.Urgency;

/** Decides how soon somebody has to be at the gate, and gives the reasons. */
final class Urgencies {
  /**
   * From this time on, Friday counts as the weekend, because nobody is sent then who was not asked
   * for before.
   */
  private static final LocalTime FRIDAY = LocalTime.of(15, 0);

  private Urgencies() {}

  /**
   * @param dangers names of the stops that were raised
   * @param pressing what makes the call urgent
   * @param quiet the reason if there is no other
   * @param zone time zone of the site
   */
  static DispatchSheet.Urgency of(
      List<String> dangers, List<Pressing> pressing, String quiet, Instant at, ZoneId zone) {
    ZonedDateTime when = at.atZone(zone);
    boolean weekend = isWeekend(when);
    Urgency level = dangers.isEmpty() ? Urgency.NEXT_WORKING_DAY : Urgency.AT_ONCE;
    List<String> reasons = new ArrayList<>(dangers);
    for (Pressing p : pressing) {
      Urgency own = weekend ? p.weekend() : p.urgency();
      level = own.compareTo(level) > 0 ? own : level;
      boolean raised = weekend && p.weekend() != p.urgency();
      reasons.add(p.said() + (raised ? ", and it is the weekend" : ""));
    }
    if (weekend && level == Urgency.NEXT_WORKING_DAY) {
      LocalDate monday = when.toLocalDate().with(TemporalAdjusters.next(DayOfWeek.MONDAY));
      reasons.add("it is the weekend: the next working day is Monday " + monday);
    }
    if (reasons.isEmpty()) {
      reasons.add(quiet);
    }
    return new DispatchSheet.Urgency(level.words(), List.copyOf(reasons));
  }

  /** What is said of the urgency if nothing makes it urgent: as much as was asked and answered. */
  static String quiet(CaseState state) {
    boolean untold =
        state.notes().stream()
            .anyMatch(e -> ((Event.Noted) e.event()).text().equals(Event.Noted.URGENCY_UNTOLD));
    return untold
        ? "nobody could say how urgent it is"
        : state.told().pressing().isEmpty()
            ? "not asked how urgent it is"
            : "nothing at the site makes it urgent";
  }

  private static boolean isWeekend(ZonedDateTime when) {
    return switch (when.getDayOfWeek()) {
      case SATURDAY, SUNDAY -> true;
      case FRIDAY -> !when.toLocalTime().isBefore(FRIDAY);
      default -> false;
    };
  }
}
