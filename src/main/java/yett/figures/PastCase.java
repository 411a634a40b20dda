package yett.figures;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.interview.state.WorkTime;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * What the statistics need of one case.
 *
 * @param cause id of the most believed cause at its end; empty if nothing was said
 * @param ending empty while it is open
 * @param visits how often somebody who may work on the gate was there; entries further apart than
 *     {@link #NEXT_VISIT} belong to different visits
 * @param spent minutes on site by the clock; gaps longer than {@link #BREAK} do not count
 * @param expected minutes that the cards give for what was done there
 * @param desk the agent who held the call last, {@link #NOBODY} if nobody took it; empty if it was
 *     no call
 * @param sent whether somebody was sent to the gate
 */
public record PastCase(
    String id,
    String site,
    Instant opened,
    String cause,
    Optional<Ending> ending,
    int visits,
    double spent,
    double expected,
    Optional<String> desk,
    boolean sent) {

  /** Stands for the agent of calls that nobody took. */
  static final String NOBODY = "nobody took it";

  /**
   * A settled choice: a technician who comes back the same afternoon is still on the same visit.
   */
  static final Duration NEXT_VISIT = Duration.ofHours(6);

  /** A settled choice: longer than any check or repair that is entered afterwards. */
  static final Duration BREAK = Duration.ofMinutes(45);

  /** Summarises the events of a case. */
  public static PastCase of(
      String id, String site, Instant opened, String cause, List<Entry> entries, RuleBase base) {
    List<Entry> counting = Entry.valid(entries);
    List<Entry> onSite = counting.stream().filter(e -> e.by().may(Role.TRAINEE)).toList();
    int visits = onSite.isEmpty() ? 0 : 1;
    double spent = 0;
    for (int i = 1; i < onSite.size(); i++) {
      Duration gap = Duration.between(onSite.get(i - 1).at(), onSite.get(i).at());
      if (gap.compareTo(NEXT_VISIT) > 0) {
        visits++;
      }
      if (!gap.isNegative() && gap.compareTo(BREAK) <= 0) {
        spent += gap.toMillis() / 60_000.0;
      }
    }
    CallLog log = CallLog.of(entries);
    return new PastCase(
        id,
        site,
        opened,
        cause,
        CaseState.of(entries).closed(),
        visits,
        spent,
        WorkTime.minutes(onSite, base),
        log.holder().or(() -> isCall(entries) ? Optional.of(NOBODY) : Optional.empty()),
        log.isSent());
  }

  private static boolean isCall(List<Entry> entries) {
    return CaseState.of(entries).opened().filter(o -> o.role() == Role.CALLER).isPresent();
  }

  /** Whether the gate worked again at the end. */
  public boolean cured() {
    return ending.filter(Ending::isCured).isPresent();
  }

  /** Whether it ended on the telephone: put right there, or it worked again by itself. */
  public boolean endedOnTelephone() {
    return visits == 0
        && ending.filter(e -> e == Ending.SOLVED || e == Ending.WORKS_AGAIN).isPresent();
  }

  /** Whether the desk is through with it; a case stays open until whoever was sent closes it. */
  public boolean isCallOver() {
    return ending.isPresent() || sent || visits > 0;
  }

  /** Whether it is closed and somebody was there. */
  public boolean visited() {
    return ending.isPresent() && visits > 0;
  }

  /** Whether the first visit cured it. */
  public boolean curedAtOnce() {
    return visits == 1 && cured();
  }
}
