package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event.Earlier;
import yett.interview.site.Trends;
import yett.interview.state.CaseState;
import yett.knowledge.InspectionKind;
import yett.rules.Conclusion.Finding;
import yett.rules.Judgement;

/**
 * Collects the readings of earlier visits to a gate: for each check its last reading, its baseline,
 * and the readings since the baseline. The baseline is the reading at the first inspection that the
 * gate passed since it was last commissioned. A repair that could have changed the reading ends the
 * baseline and everything read before. The next reading after that repair that is in order becomes
 * the new baseline, once the gate is proved. An inspection that failed counts as passed when a
 * later case or inspection ends with every proof passed.
 */
public final class Baselines {
  /** How many readings of one check are kept; that covers more years than anybody looks back. */
  private static final int MOST = 30;

  private final Casebook casebook;
  private final Expertise expertise;

  public Baselines(Casebook casebook, Expertise expertise) {
    this.casebook = casebook;
    this.expertise = expertise;
  }

  /** The earlier readings for a new case: baselines first, then those since, newest first. */
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

  /** What is known up to one visit, by check. */
  private static final class Known {
    private final Map<String, Earlier> baseline = new LinkedHashMap<>();

    /** Readings since the baseline, oldest first. */
    private final Map<String, List<Earlier>> since = new TreeMap<>();

    /** The last reading; one from before the baseline if there is none since. */
    private final Map<String, Earlier> last = new TreeMap<>();

    /** What an inspection that failed read in order; it counts once the gate is proved. */
    private final Map<String, Earlier> waiting = new LinkedHashMap<>();

    /** When the gate was commissioned, if that has still to be proved. */
    private Optional<Instant> commissioned = Optional.empty();

    void end(Predicate<String> check) {
      baseline.keySet().removeIf(check);
      since.keySet().removeIf(check);
      waiting.keySet().removeIf(check);
    }

    void commission() {
      end(check -> true);
      commissioned = Optional.empty();
    }

    void commissionOnceProved(Instant at) {
      waiting.clear();
      commissioned = Optional.of(at);
    }

    /** The gate passed every proof: what the failed inspections read in order counts. */
    void prove() {
      commissioned.ifPresent(
          at -> {
            baseline.values().removeIf(e -> e.at().isBefore(at));
            since.values().forEach(all -> all.removeIf(e -> e.at().isBefore(at)));
          });
      waiting.forEach(baseline::putIfAbsent);
      waiting.clear();
      commissioned = Optional.empty();
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

  /** Adds one case to what is known from the cases before it. */
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
      boolean failed = state.inspection().isPresent() && state.closed().isPresent() && !passed;
      if (state.inspection().equals(Optional.of(InspectionKind.COMMISSIONING))) {
        if (passed) {
          known.commission();
        } else if (failed) {
          known.commissionOnceProved(entries.get(0).at());
        }
      }
      known.end(check -> changedAfter(0, check));
      if (passed || proved()) {
        known.prove();
      }
      Map<String, CaseState.Answered> here = new LinkedHashMap<>();
      for (CaseState.Answered a : state.answers()) {
        boolean ofThisVisit = a.taken().isEmpty();
        if (ofThisVisit
            && a.answer().reading().isPresent()
            && expertise.base().checks().containsKey(a.check())) {
          boolean stands = !changedAfter(a.event(), a.check());
          known.read(reading(a, false), stands);
          if (passed || failed || stands && proved() && changedAfter(0, a.check())) {
            here.put(a.check(), a);
          }
        }
      }
      if (!here.isEmpty()) {
        Judgement judgement = interview.judgement(entries);
        here.values().stream()
            .filter(a -> judgement.finding(a.event()).filter(this::ordinary).isPresent())
            .forEach(
                a ->
                    (failed ? known.waiting : known.baseline)
                        .putIfAbsent(a.check(), reading(a, true)));
      }
    }

    /** Whether the case ended with every proof passed that the gate needs. */
    private boolean proved() {
      return state.closed().equals(Optional.of(Ending.REPAIRED));
    }

    private boolean ordinary(Finding finding) {
      return expertise.base().checks().get(finding.check()).indexOf(finding.outcome()) == 0;
    }

    private boolean changedAfter(long event, String check) {
      return state.work().changedSince(event, check, expertise.base());
    }

    private Earlier reading(CaseState.Answered a, boolean baseline) {
      double value = a.answer().reading().orElseThrow().value();
      return new Earlier(a.check(), value, times.get(a.event()), baseline, temperature);
    }
  }
}
