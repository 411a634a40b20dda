package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/** Finds the events that "back" takes back. */
public final class Undo {
  private Undo() {}

  /**
   * Numbers of the events of the last answer. Events that were entered together are taken back
   * together. Set-ups, notes and events that were already taken back are skipped.
   *
   * @param base tells which checks are about dangers, where a whole list is answered together, and
   *     which are looks at one place
   */
  public static List<Long> last(List<Entry> entries, RuleBase base) {
    Set<Long> gone = Entry.takenBack(entries);
    List<Long> last = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0; i--) {
      Entry entry = entries.get(i);
      if (gone.contains(entry.number()) || !isAnAnswer(entry)) {
        if (!last.isEmpty()) {
          break;
        }
        continue;
      }
      if (!last.isEmpty() && !together(entry, entries.get(i + 1), base)) {
        break;
      }
      last.add(entry.number());
    }
    last.addAll(remarks(entries, last, gone));
    return last;
  }

  /**
   * Whether somebody answered with it. What is known of a gate is not asked of a caller; it was
   * taken over by itself, and would be again.
   */
  private static boolean isAnAnswer(Entry entry) {
    boolean site =
        entry.event() instanceof Event.SiteTaken || entry.event() instanceof Event.SiteAnswered;
    return entry.event() instanceof Event.Undoable && !(site && entry.by() == Role.CALLER);
  }

  /**
   * Notes that were entered together with the answers: remarks on looks, and why a list stayed
   * without an answer, which comes right before it.
   */
  private static List<Long> remarks(List<Entry> entries, List<Long> answers, Set<Long> gone) {
    Set<Instant> times =
        entries.stream()
            .filter(e -> answers.contains(e.number()))
            .map(Entry::at)
            .collect(Collectors.toSet());
    return entries.stream()
        .filter(
            e ->
                e.event() instanceof Event.Noted n
                    && (n.about().isPresent() || answers.contains(e.number() + 1)))
        .filter(e -> times.contains(e.at()) && !gone.contains(e.number()))
        .map(Entry::number)
        .toList();
  }

  /**
   * Whether the events came from one typed line: dangers of one list with those taken back as a
   * mistake, looks of one round, or what was known of the gate.
   */
  private static boolean together(Entry earlier, Entry later, RuleBase base) {
    boolean site =
        earlier.event() instanceof Event.SiteAnswered
            && later.event() instanceof Event.SiteAnswered;
    boolean list =
        earlier.event() instanceof Event.Answered a
            && later.event() instanceof Event.Answered b
            && base.checks().containsKey(a.check())
            && base.checks().containsKey(b.check())
            && isOneList(base.checks().get(a.check()), base.checks().get(b.check()));
    boolean mistakes =
        earlier.event() instanceof Event.Corrected
            && (later.event() instanceof Event.Corrected
                || later.event() instanceof Event.Answered b
                    && base.checks().containsKey(b.check())
                    && base.checks().get(b.check()).danger());
    return (site || list || mistakes) && earlier.at().equals(later.at());
  }

  private static boolean isOneList(Check one, Check other) {
    return one.danger() && other.danger()
        || one.place().isPresent() && one.place().equals(other.place());
  }
}
