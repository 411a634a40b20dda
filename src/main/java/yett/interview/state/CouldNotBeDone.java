package yett.interview.state;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.interview.event.Entry;
import yett.interview.event.Event;

/**
 * Repairs that somebody could not do and that nobody has done since, in the order in which they
 * were refused. Whoever comes later may try them again, but should know why they were left.
 */
public final class CouldNotBeDone {
  private CouldNotBeDone() {}

  /** The last refusal of each, by the id of the repair. */
  public static Map<String, Entry> of(List<Entry> entries) {
    Map<String, Entry> left = new LinkedHashMap<>();
    for (Entry entry : Entry.valid(entries)) {
      if (entry.event() instanceof Event.Repaired repaired) {
        left.remove(repaired.repair());
        if (!repaired.done()) {
          left.put(repaired.repair(), entry);
        }
      }
    }
    return left;
  }
}
