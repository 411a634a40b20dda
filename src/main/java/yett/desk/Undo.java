package yett.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import yett.interview.Entry;
import yett.interview.Event;

/** Finds what "back" takes back. */
public final class Undo {
  private Undo() {}

  /**
   * Numbers of the events that the last answer consists of; those that were given in one go are
   * taken back in one go. Set-ups, notes and what was taken back already are passed over.
   *
   * @param danger whether a check is one about dangers, of which a whole list is answered at once
   */
  public static List<Long> last(List<Entry> entries, Predicate<String> danger) {
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
      if (!last.isEmpty() && !together(entry, entries.get(i + 1), danger)) {
        break;
      }
      last.add(entry.number());
    }
    return last;
  }

  /** Events of one line that was typed: dangers of one list, and what was known of the gate. */
  private static boolean together(Entry earlier, Entry later, Predicate<String> danger) {
    boolean site =
        earlier.event() instanceof Event.SiteAnswered
            && later.event() instanceof Event.SiteAnswered;
    boolean dangers =
        earlier.event() instanceof Event.Answered a
            && later.event() instanceof Event.Answered b
            && danger.test(a.check())
            && danger.test(b.check());
    return (site || dangers) && earlier.at().equals(later.at());
  }
}
