package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.interview.CaseState;
import yett.interview.Ending;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Event.Earlier;
import yett.interview.Expertise;
import yett.interview.Interview;
import yett.interview.Trends;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Finding;
import yett.rules.Judgement;

/**
 * Readings of earlier visits to a gate: what each check read last, its baseline, and what it read
 * since. The baseline is what it read, and passed with, at the first inspection that the gate
 * passed since it was last commissioned; a repair that could have changed the reading ends it, and
 * what was read before.
 */
public final class Baselines {
  /** Of one check; more years than anybody looks back. */
  private static final int MOST = 30;

  private final Casebook casebook;
  private final Expertise expertise;

  public Baselines(Casebook casebook, Expertise expertise) {
    this.casebook = casebook;
    this.expertise = expertise;
  }

  /** For a case that begins now: baselines, then what was read since, the newest first. */
  public List<Earlier> of(String gate) {
    List<CaseSummary> lines =
        casebook.casesAt(gate).stream().sorted(Comparator.comparing(CaseSummary::opened)).toList();
    if (lines.isEmpty()) {
      return List.of();
    }
    Known known = new Known();
    try (Interview interview = expertise.newInterview()) {
      casebook.forEach(
          lines, (line, events) -> new Visit(interview, StoredEntries.readable(events)).add(known));
    }
    return known.all();
  }

  /** What is known so far, by check. */
  private static final class Known {
    private final Map<String, Earlier> baseline = new LinkedHashMap<>();

    /** Since the baseline began, oldest first. */
    private final Map<String, List<Earlier>> since = new TreeMap<>();

    /** What was read last, before the baseline began if nothing was read since. */
    private final Map<String, Earlier> last = new TreeMap<>();

    void end(Predicate<String> check) {
      baseline.keySet().removeIf(check);
      since.keySet().removeIf(check);
    }

    void read(Earlier reading, boolean afterRepairs) {
      last.put(reading.check(), reading);
      if (afterRepairs) {
        since.computeIfAbsent(reading.check(), c -> new ArrayList<>()).add(reading);
      }
    }

    List<Earlier> all() {
      List<Earlier> all = new ArrayList<>(baseline.values());
      last.forEach(
          (check, reading) -> {
            List<Earlier> readings = new ArrayList<>(since.getOrDefault(check, List.of()));
            readings.remove(reading);
            readings.add(reading);
            List<Earlier> newest =
                readings.subList(Math.max(0, readings.size() - MOST), readings.size());
            for (int i = newest.size() - 1; i >= 0; i--) {
              all.add(newest.get(i));
            }
          });
      return List.copyOf(all);
    }
  }

  /** One case, added to what is known of those before it. */
  private final class Visit {
    private final Interview interview;
    private final List<Entry> entries;
    private final CaseState state;
    private final Map<Long, Instant> times;
    private final Optional<Double> temperature;

    Visit(Interview interview, List<Entry> entries) {
      this.interview = interview;
      this.entries = entries;
      this.state = CaseState.of(entries);
      this.times =
          entries.stream().collect(Collectors.toMap(Entry::number, Entry::at, (a, b) -> b));
      OptionalDouble told = Trends.temperature(expertise.base(), state);
      this.temperature = told.isPresent() ? Optional.of(told.getAsDouble()) : Optional.empty();
    }

    void add(Known known) {
      boolean passed = state.closed().equals(Optional.of(Ending.INSPECTED));
      if (passed && state.inspection().equals(Optional.of(InspectionKind.COMMISSIONING))) {
        known.end(check -> true);
      }
      Map<Long, Repair> repairs = new LinkedHashMap<>();
      state.work().deeds().stream()
          .filter(d -> d.event() instanceof Event.Repaired)
          .forEach(
              d ->
                  repairs.put(
                      d.number(),
                      expertise.base().repairs().get(((Event.Repaired) d.event()).repair())));
      repairs.values().forEach(r -> known.end(check -> changes(r, check)));
      Map<String, Earlier> here = new LinkedHashMap<>();
      for (CaseState.Answered a : state.answers()) {
        if (a.answer().reading().isPresent() && expertise.base().checks().containsKey(a.check())) {
          Earlier reading = reading(a);
          here.put(a.check(), reading);
          known.read(
              reading,
              repairs.entrySet().stream()
                  .noneMatch(r -> r.getKey() > a.event() && changes(r.getValue(), a.check())));
        }
      }
      if (passed) {
        Set<String> sound = sound();
        here.values().stream()
            .filter(e -> sound.contains(e.check()))
            .forEach(e -> known.baseline.putIfAbsent(e.check(), asBaseline(e)));
      }
    }

    private Earlier reading(CaseState.Answered a) {
      double value = a.answer().reading().orElseThrow().value();
      return new Earlier(a.check(), value, times.get(a.event()), false, temperature);
    }

    private Earlier asBaseline(Earlier e) {
      return new Earlier(e.check(), e.value(), e.at(), true, e.temperature());
    }

    /** Checks whose reading was ordinary. */
    private Set<String> sound() {
      Judgement judgement = interview.judgement(entries);
      return judgement.findings().stream()
          .filter(f -> expertise.base().checks().get(f.check()).indexOf(f.outcome()) == 0)
          .map(Finding::check)
          .collect(Collectors.toSet());
    }
  }

  /** Whether a repair could have changed what a check reads. */
  private boolean changes(Repair repair, String id) {
    Check check = expertise.base().checks().get(id);
    return repair == null
        || check == null
        || repair.removes().keySet().stream().anyMatch(check.likelihood()::containsKey);
  }
}
