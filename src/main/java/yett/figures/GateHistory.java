package yett.figures;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;

/**
 * What happened at one gate, case by case.
 *
 * @param cases oldest first
 */
public record GateHistory(List<Past> cases) {

  /**
   * A case in the history of its gate.
   *
   * @param onSite when somebody who may work on the gate last entered something; empty if nobody
   *     did
   * @param cause id of the most believed cause; empty if nothing was said
   * @param inspection what was inspected; empty for a search for a fault
   * @param repairs ids of the repairs that were made, in order
   */
  public record Past(
      String id,
      Instant opened,
      Optional<Instant> onSite,
      Optional<Ending> ending,
      String cause,
      List<String> repairs,
      List<Reading> readings,
      Optional<InspectionKind> inspection) {

    /** Summarises the events of a case. */
    public static Past of(String id, Instant opened, String cause, List<Entry> entries) {
      CaseState state = CaseState.of(entries);
      Map<Long, Instant> times = new HashMap<>();
      entries.forEach(e -> times.put(e.number(), e.at()));
      List<Reading> readings = new ArrayList<>();
      for (CaseState.Answered a : state.answers()) {
        a.answer()
            .reading()
            .filter(r -> a.taken().isEmpty()) // the inspection has it
            .ifPresent(r -> readings.add(new Reading(a.check(), times.get(a.event()), r.value())));
      }
      List<String> repairs = new ArrayList<>();
      for (Entry deed : state.work().deeds()) {
        if (deed.event() instanceof Event.Repaired repaired) {
          repairs.add(repaired.repair());
        }
      }
      return new Past(
          id,
          opened,
          Entry.valid(entries).stream()
              .filter(e -> e.by().may(Role.TRAINEE))
              .map(Entry::at)
              .max(Comparator.naturalOrder()),
          state.closed(),
          cause,
          List.copyOf(repairs),
          List.copyOf(readings),
          state.inspection());
    }

    public boolean open() {
      return ending.isEmpty();
    }
  }

  /**
   * A reading that was taken at the gate.
   *
   * @param value in the canonical unit of what the check measures
   */
  public record Reading(String check, Instant at, double value) {}

  public GateHistory {
    cases = cases.stream().sorted(Comparator.comparing(Past::opened)).toList();
  }

  /** When somebody was last at the gate. */
  public Optional<Instant> lastVisit() {
    return cases.stream().flatMap(c -> c.onSite().stream()).max(Comparator.naturalOrder());
  }

  public long open() {
    return cases.stream().filter(Past::open).count();
  }

  /** The readings of each check, oldest first; the check with most readings comes first. */
  public List<List<Reading>> readings() {
    Map<String, List<Reading>> byCheck = new TreeMap<>();
    for (Past past : cases) {
      past.readings()
          .forEach(r -> byCheck.computeIfAbsent(r.check(), c -> new ArrayList<>()).add(r));
    }
    byCheck.values().forEach(all -> all.sort(Comparator.comparing(Reading::at)));
    return byCheck.values().stream()
        .sorted(Comparator.comparingInt(all -> -all.size()))
        .map(List::copyOf)
        .toList();
  }
}
