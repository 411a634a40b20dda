package yett.interview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Role;

/**
 * A case read in the plainest way, to hold the interview's own reading against: what counts, after
 * everything that was taken back and corrected.
 */
final class PlainReading {
  /** An answer that counts, with the number of repairs done before it. */
  record Told(String check, Answer answer, int epoch, Role by) {
    /** What a caller could not tell, somebody at the gate may be asked. */
    boolean yieldsTo(Role role) {
      return !answer.tells() && by == Role.CALLER && role != Role.CALLER;
    }
  }

  final List<Told> told = new ArrayList<>();
  final Map<String, String> site = new LinkedHashMap<>();
  final Set<String> inForce = new LinkedHashSet<>();
  final Set<String> madeSafe = new HashSet<>();
  final List<String> repairs = new ArrayList<>();
  int epoch;

  PlainReading(List<Entry> entries) {
    Set<Long> gone = new HashSet<>();
    Map<Long, Entry> corrections = new HashMap<>();
    for (Entry e : entries) {
      if (e.event() instanceof Event.Retracted r) {
        gone.add(r.event());
      }
    }
    for (Entry e : entries) {
      if (e.event() instanceof Event.Corrected c && !gone.contains(e.number())) {
        corrections.put(c.event(), e);
      }
    }
    for (Entry e : entries) {
      if (!gone.contains(e.number())) {
        follow(e, corrections);
      }
    }
  }

  private void follow(Entry entry, Map<Long, Entry> corrections) {
    Event event = entry.event();
    boolean saysSomething =
        !(event instanceof Event.MadeSafe
            || event instanceof Event.Noted
            || event instanceof Event.Said
            || event instanceof Event.Closed);
    if (saysSomething) {
      madeSafe.clear();
    }
    if (event instanceof Event.Answered e) {
      Entry last = corrections.getOrDefault(entry.number(), entry);
      Answer answer = last.event() instanceof Event.Corrected c ? c.answer() : e.answer();
      told.add(new Told(e.check(), answer, epoch, last.by()));
    } else if (event instanceof Event.SiteAnswered e) {
      site.put(e.question(), e.answer());
    } else if (event instanceof Event.Repaired e && e.done()) {
      epoch++;
      repairs.add(e.repair());
    } else if (event instanceof Event.SetUpEntered e) {
      inForce.add(e.setUp());
    } else if (event instanceof Event.SetUpLeft e) {
      inForce.remove(e.setUp());
    } else if (event instanceof Event.MadeSafe e) {
      madeSafe.add(e.stop());
    }
  }

  /** The last word on a check, whenever it was given. */
  Optional<Told> last(String check) {
    return told.stream().filter(t -> t.check().equals(check)).reduce((a, b) -> b);
  }

  /** The last word on a check since the last repair. */
  Optional<Told> now(String check) {
    return last(check).filter(t -> t.epoch() == epoch);
  }

  /** How often a check was put off since the last repair, so that it counts for this person. */
  long putOff(String check, Role role) {
    return told.stream()
        .filter(t -> t.check().equals(check) && t.epoch() == epoch)
        .filter(t -> t.answer().putOff() && !t.yieldsTo(role))
        .count();
  }
}
