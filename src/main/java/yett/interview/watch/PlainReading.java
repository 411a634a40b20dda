package yett.interview.watch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * A second, simple reading of a case's events: what counts after retractions and corrections.
 * {@link SafetyWatch} compares the interview's own reading with it.
 */
final class PlainReading {
  /**
   * An answer that counts.
   *
   * @param epoch number of repairs done before it
   */
  record Told(long number, String check, Answer answer, int epoch, Role by) {
    /** Whether somebody at the gate may be asked again what a caller could not tell. */
    boolean yieldsTo(Role role) {
      return !answer.tells() && by == Role.CALLER && role != Role.CALLER;
    }
  }

  final List<Told> told = new ArrayList<>();
  final Map<String, String> site = new LinkedHashMap<>();
  final Set<String> inForce = new LinkedHashSet<>();

  /** The set-ups in force that nobody has confirmed since the case was taken up again. */
  final Set<String> unseen = new LinkedHashSet<>();

  /** Stops that were made safe, with the number of the event. */
  final Map<String, Long> madeSafe = new HashMap<>();

  /** Number of the last event after which somebody comes anew; 0 if there is none. */
  long cameAnew;

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
        e.event().accept(new Adding(e, corrections)).run();
      } else if (e.event() instanceof Event.MadeSafe m) {
        inForceAfter(m); // taking a word back moves nothing at the gate
      }
    }
  }

  /** Applies one event. */
  private final class Adding implements SomeEvents<Runnable> {
    private final Entry entry;
    private final Map<Long, Entry> corrections;

    Adding(Entry entry, Map<Long, Entry> corrections) {
      this.entry = entry;
      this.corrections = corrections;
    }

    @Override
    public Runnable answered(Event.Answered event) {
      Entry last = corrections.getOrDefault(entry.number(), entry);
      Answer answer = last.event() instanceof Event.Corrected c ? c.answer() : event.answer();
      return () -> told.add(new Told(entry.number(), event.check(), answer, epoch, last.by()));
    }

    @Override
    public Runnable siteAnswered(Event.SiteAnswered event) {
      return () -> site.put(event.question(), event.answer());
    }

    @Override
    public Runnable repaired(Event.Repaired event) {
      return () -> {
        if (event.done()) {
          epoch++;
          repairs.add(event.repair());
        }
      };
    }

    @Override
    public Runnable setUpEntered(Event.SetUpEntered event) {
      return () -> {
        event.instead().forEach(inForce::remove);
        event.instead().forEach(unseen::remove);
        inForce.add(event.setUp());
        unseen.remove(event.setUp());
      };
    }

    @Override
    public Runnable setUpLeft(Event.SetUpLeft event) {
      return () -> {
        inForce.remove(event.setUp());
        unseen.remove(event.setUp());
      };
    }

    @Override
    public Runnable returned(Event.Returned event) {
      return this::comeAnew;
    }

    @Override
    public Runnable takenUp(Event.TakenUp event) {
      return this::comeAnew;
    }

    private void comeAnew() {
      unseen.addAll(inForce);
      cameAnew = entry.number();
    }

    @Override
    public Runnable madeSafe(Event.MadeSafe event) {
      return () -> {
        madeSafe.put(event.stop(), entry.number());
        inForceAfter(event);
      };
    }

    @Override
    public Runnable other(Event event) {
      return () -> {};
    }
  }

  private void inForceAfter(Event.MadeSafe event) {
    event.setUps().ifPresent(now -> inForce.retainAll(now));
    event.setUps().ifPresent(inForce::addAll);
    event.setUps().ifPresent(now -> unseen.retainAll(now.subList(0, Math.max(0, now.size() - 1))));
  }

  /** The last answer to a check, at any time. */
  Optional<Told> last(String check) {
    return told.stream().filter(t -> t.check().equals(check)).reduce((a, b) -> b);
  }

  /** The last answer to a check since the last repair. */
  Optional<Told> now(String check) {
    return last(check).filter(t -> t.epoch() == epoch);
  }

  /** Number of the last answer, as corrected, that reports a danger; 0 if none does. */
  long lastDanger(RuleBase base) {
    return told.stream()
        .filter(t -> base.checks().containsKey(t.check()) && base.checks().get(t.check()).danger())
        .filter(
            t ->
                t.answer()
                    .choice()
                    .filter(outcome -> base.checks().get(t.check()).indexOf(outcome) > 0)
                    .isPresent())
        .mapToLong(Told::number)
        .max()
        .orElse(0);
  }

  /** How often a check was put off since the last repair, as far as that counts for this person. */
  long putOff(String check, Role role) {
    return told.stream()
        .filter(t -> t.check().equals(check) && t.epoch() == epoch)
        .filter(t -> t.answer().putOff() && !t.yieldsTo(role))
        .count();
  }
}
