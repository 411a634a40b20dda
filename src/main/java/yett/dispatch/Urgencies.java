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
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Pressing;
import yett.knowledge.Pressing.Urgency;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.Spoken;

/** Decides how soon somebody has to be at the gate, and gives the reasons. */
final class Urgencies {
  /**
   * From this time on, Friday counts as the weekend, because nobody is sent then who was not asked
   * for before.
   */
  private static final LocalTime FRIDAY = LocalTime.of(15, 0);

  private Urgencies() {}

  /**
   * How soon, and why, if nothing makes the call urgent. What nobody asked or could say may be
   * urgent, so such a call does not wait for the next working day.
   */
  enum Quiet {
    NOTHING_URGENT("nothing at the site makes it urgent", Urgency.NEXT_WORKING_DAY),
    UNTOLD("nobody could say how urgent it is", Urgency.TODAY),
    UNASKED("not asked how urgent it is", Urgency.TODAY);

    private final String words;
    private final Urgency level;

    Quiet(String words, Urgency level) {
      this.words = words;
      this.level = level;
    }

    static Quiet of(CaseState state) {
      boolean untold =
          state.notes().stream().anyMatch(e -> ((Event.Noted) e.event()).tellsNoUrgency());
      return untold ? UNTOLD : state.told().pressing().isEmpty() ? UNASKED : NOTHING_URGENT;
    }
  }

  /** A danger as a reason to go, and how soon somebody has to be there because of it. */
  record Danger(String words, Urgency level) {
    static Danger atOnce(String words) {
      return new Danger(words, Urgency.AT_ONCE);
    }
  }

  /**
   * @param dangers the stops that were raised, and whatever else tells of a danger
   * @param pressing what makes the call urgent
   * @param quiet what counts if there is neither
   * @param zone time zone of the site
   */
  static DispatchSheet.Urgency of(
      List<Danger> dangers, List<Pressing> pressing, Quiet quiet, Instant at, ZoneId zone) {
    ZonedDateTime when = at.atZone(zone);
    boolean weekend = isWeekend(when);
    Urgency level = dangers.isEmpty() ? quiet.level : Urgency.NEXT_WORKING_DAY;
    List<String> reasons = new ArrayList<>();
    for (Danger d : dangers) {
      level = sooner(level, d.level());
      reasons.add(d.words());
    }
    for (Pressing p : pressing) {
      Urgency own = weekend ? p.weekend() : p.urgency();
      level = sooner(level, own);
      boolean raised = weekend && p.weekend() != p.urgency();
      reasons.add(p.said() + (raised ? ", and it is the weekend" : ""));
    }
    if (weekend && level == Urgency.NEXT_WORKING_DAY) {
      LocalDate monday = when.toLocalDate().with(TemporalAdjusters.next(DayOfWeek.MONDAY));
      reasons.add("it is the weekend: the next working day is Monday " + monday);
    }
    if (reasons.isEmpty()) {
      reasons.add(quiet.words);
    }
    return new DispatchSheet.Urgency(level.words(), List.copyOf(reasons));
  }

  /**
   * Complaints that tell of a danger, as reasons to go at once: "it closes on cars" stays dangerous
   * even if it does not happen at the moment.
   */
  static List<Danger> complaints(RuleBase base, CaseState state) {
    Spoken spoken = base.telephone().spoken();
    return state.told().complaints().orElse(List.of()).stream()
        .filter(c -> !spoken.dangers("complaint", c).isEmpty())
        .map(c -> Danger.atOnce("\"" + base.checks().get(c).spoken() + "\" was reported"))
        .toList();
  }

  /** Time of the caller's last words; what the desk notes or others enter later changes nothing. */
  static Instant lastWord(List<Entry> entries) {
    return entries.stream()
        .filter(e -> e.by() == Role.CALLER)
        .filter(e -> !(e.event() instanceof Event.Tended || e.event() instanceof Event.Noted))
        .reduce((a, b) -> b)
        .orElse(entries.get(entries.size() - 1))
        .at();
  }

  private static Urgency sooner(Urgency one, Urgency other) {
    return one.compareTo(other) > 0 ? one : other; // the least urgent comes first
  }

  private static boolean isWeekend(ZonedDateTime when) {
    return switch (when.getDayOfWeek()) {
      case SATURDAY, SUNDAY -> true;
      case FRIDAY -> !when.toLocalTime().isBefore(FRIDAY);
      default -> false;
    };
  }
}
