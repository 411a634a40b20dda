package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.Entry;
import yett.interview.Event;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Finds what "back" takes back. */
public final class Undo {
  private Undo() {}

  /**
   * Numbers of the events that the last answer consists of; those that were given in one go are
   * taken back in one go. Set-ups, notes and what was taken back already are passed over.
   *
   * @param base says which checks are about dangers, of which a whole list is answered at once, and
   *     which are looks of one place
   */
  public static List<Long> last(List<Entry> entries, RuleBase base) {
    Set<Long> gone = Entry.takenBack(entries);
    List<Long> last = new ArrayList<>();
    for (int i = entries.size() - 1; i >= 0; i--) {
      Entry entry = entries.get(i);
      if (gone.contains(entry.number()) || !(entry.event() instanceof Event.Undoable)) {
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

  /** Remarks on what was looked at, that were made with the answers. */
  private static List<Long> remarks(List<Entry> entries, List<Long> answers, Set<Long> gone) {
    Set<Instant> times =
        entries.stream()
            .filter(e -> answers.contains(e.number()))
            .map(Entry::at)
            .collect(Collectors.toSet());
    return entries.stream()
        .filter(e -> e.event() instanceof Event.Noted n && n.about().isPresent())
        .filter(e -> times.contains(e.at()) && !gone.contains(e.number()))
        .map(Entry::number)
        .toList();
  }

  /**
   * Events of one line that was typed: dangers of one list, looks of one round, and what was known
   * of the gate.
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
    return (site || list) && earlier.at().equals(later.at());
  }

  private static boolean isOneList(Check one, Check other) {
    return one.danger() && other.danger()
        || one.place().isPresent() && one.place().equals(other.place());
  }
}
