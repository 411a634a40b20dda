package yett.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Finding;
import yett.rules.Judgement;

/**
 * Readings of earlier visits to a gate: what each check read last, and its baseline. That is what
 * it read, and passed with, at the first inspection that the gate passed since it was last
 * commissioned; a repair that could have changed the reading ends it.
 */
public final class Baselines {
  private final Casebook casebook;
  private final Expertise expertise;

  public Baselines(Casebook casebook, Expertise expertise) {
    this.casebook = casebook;
    this.expertise = expertise;
  }

  /** For a case that begins now. */
  public List<Earlier> of(String gate) {
    String name = casebook.nameNow(gate);
    List<CaseSummary> lines =
        casebook.cases().stream()
            .filter(line -> line.siteId().equals(name))
            .sorted(Comparator.comparing(CaseSummary::opened))
            .toList();
    Map<String, Earlier> last = new LinkedHashMap<>();
    Map<String, Earlier> baseline = new LinkedHashMap<>();
    if (lines.isEmpty()) {
      return List.of();
    }
    try (Interview interview = expertise.newInterview()) {
      casebook.forEach(
          lines,
          (line, events) ->
              new Visit(interview, StoredEntries.readable(events)).add(last, baseline));
    }
    List<Earlier> all = new ArrayList<>(baseline.values());
    last.values().stream().sorted(Comparator.comparing(Earlier::check)).forEach(all::add);
    return List.copyOf(all);
  }

  /** One case, added to what is known of those before it. */
  private final class Visit {
    private final Interview interview;
    private final List<Entry> entries;
    private final CaseState state;
    private final Map<Long, Instant> times;

    Visit(Interview interview, List<Entry> entries) {
      this.interview = interview;
      this.entries = entries;
      this.state = CaseState.of(entries);
      this.times =
          entries.stream().collect(Collectors.toMap(Entry::number, Entry::at, (a, b) -> b));
    }

    void add(Map<String, Earlier> last, Map<String, Earlier> baseline) {
      boolean passed = state.closed().equals(Optional.of(Ending.INSPECTED));
      if (passed && state.inspection().equals(Optional.of(InspectionKind.COMMISSIONING))) {
        baseline.clear();
      }
      state.work().deeds().stream()
          .filter(d -> d.event() instanceof Event.Repaired)
          .map(d -> expertise.base().repairs().get(((Event.Repaired) d.event()).repair()))
          .forEach(r -> baseline.keySet().removeIf(check -> changes(r, check)));
      Map<String, Earlier> here = readings();
      last.putAll(here);
      if (passed) {
        Set<String> sound = sound();
        here.values().stream()
            .filter(e -> sound.contains(e.check()))
            .forEach(
                e ->
                    baseline.putIfAbsent(
                        e.check(), new Earlier(e.check(), e.value(), e.at(), true)));
      }
    }

    private Map<String, Earlier> readings() {
      Map<String, Earlier> here = new HashMap<>();
      for (CaseState.Answered a : state.answers()) {
        a.answer()
            .reading()
            .filter(r -> expertise.base().checks().containsKey(a.check()))
            .ifPresent(
                r ->
                    here.put(
                        a.check(), new Earlier(a.check(), r.value(), times.get(a.event()), false)));
      }
      return here;
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
