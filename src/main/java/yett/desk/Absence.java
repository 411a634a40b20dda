package yett.desk;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Role;

/**
 * The time since somebody last worked on a case. After a while, or in place of another, nobody can
 * vouch for the gate being as it was left.
 *
 * @param last the last entry of whoever worked on the case
 */
public record Absence(Entry last) {
  /**
   * Longest absence after which somebody is asked whether they kept lock and key in sight. A
   * judgement.
   */
  private static final Duration SHORT = Duration.ofMinutes(30);

  /** Since the last of these entries, without those of a desk that arranged a visit. */
  public static Absence since(List<Entry> entries) {
    return new Absence(
        entries.stream()
            .filter(e -> !(e.event() instanceof Event.Tended || e.event() instanceof Event.Unread))
            .reduce((a, b) -> b)
            .orElseThrow());
  }

  /** Whether nobody who answers in this role at this time can have seen to the gate since. */
  public boolean isAnew(Role role, Instant now) {
    return isOfAnother(role) || Duration.between(last.at(), now).compareTo(SHORT) > 0;
  }

  /** Whether somebody in another role worked on the case before. */
  public boolean isOfAnother(Role role) {
    return last.by() != role;
  }
}
