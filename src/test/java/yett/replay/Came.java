package yett.replay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import yett.interview.course.Expertise;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.Replayed.Taken;

/**
 * A recorded case and how it came out, judged by its roots; a consequence that is found first is
 * not enough.
 *
 * @param tillRoots checks that were asked before the repair that left no root; empty if one was
 *     left at the end
 * @param needless repairs that took no true cause away and that none which did entails
 */
record Came(
    RecordedCase recorded, Replayed replayed, Optional<Long> tillRoots, Set<String> needless) {

  /** Replays cases, several at once. */
  static List<Came> of(List<RecordedCase> cases, Expertise expertise) {
    Replayer replayer = new Replayer(expertise);
    List<Callable<Came>> tasks = new ArrayList<>();
    cases.forEach(c -> tasks.add(() -> of(c, replayer.run(c).withoutMoment(), expertise.base())));
    List<Came> came = new ArrayList<>();
    InOrder.run(tasks, InOrder.threads(), came::add);
    return List.copyOf(came);
  }

  static Came of(RecordedCase recorded, Replayed replayed, RuleBase base) {
    Witness gate = new Witness(recorded, base);
    Set<String> useful = new HashSet<>();
    Set<String> idle = new LinkedHashSet<>();
    Optional<Long> tillRoots = Optional.empty();
    long checks = 0;
    for (Taken step : replayed.steps()) {
      if (step.kind().equals("check")) {
        checks++;
      } else if (step.kind().equals("repair")) {
        Set<String> before = gate.remaining();
        gate.repaired(base.repairs().get(step.id()));
        (gate.remaining().equals(before) ? idle : useful).add(step.id());
        if (tillRoots.isEmpty() && Collections.disjoint(gate.remaining(), wanted(recorded))) {
          tillRoots = Optional.of(checks);
        }
      }
    }
    idle.removeAll(withEntailed(useful, base));
    return new Came(recorded, replayed, tillRoots, Set.copyOf(idle));
  }

  private static Set<String> withEntailed(Set<String> repairs, RuleBase base) {
    Set<String> all = new HashSet<>();
    repairs.forEach(id -> add(id, all, base));
    return all;
  }

  private static void add(String id, Set<String> all, RuleBase base) {
    Repair repair = base.repairs().get(id);
    if (repair != null && all.add(id)) {
      repair.entails().forEach(next -> add(next, all, base));
    }
  }

  private static Set<String> wanted(RecordedCase recorded) {
    return recorded.expect().map(Set::of).orElseGet(() -> Set.copyOf(recorded.roots()));
  }

  /** Where people are in danger the stop is judged, and not the cause. */
  boolean judged() {
    return recorded.stop().isEmpty() && !wanted(recorded).isEmpty();
  }

  boolean rootAmong(int few) {
    return among(wanted(recorded), few);
  }

  boolean trueCauseFirst() {
    return among(recorded.truth().orElse(List.of()), 1);
  }

  boolean comesFirst(String cause) {
    return among(Set.of(cause), 1);
  }

  private boolean among(Collection<String> causes, int few) {
    return replayed.ranking().stream().limit(few).anyMatch(r -> causes.contains(r.cause()));
  }

  /** Whether the rule base has a repair for each root. */
  boolean mendable(RuleBase base) {
    Set<String> removed =
        base.repairs().values().stream()
            .flatMap(r -> r.removes().keySet().stream())
            .collect(Collectors.toSet());
    return removed.containsAll(recorded.roots());
  }

  boolean handedOver() {
    return replayed.ended().equals("handed-over");
  }

  /** Whether some root takes a repair that this person may not do: somebody else has to come. */
  boolean reserved(RuleBase base) {
    return !recorded.roots().stream()
        .allMatch(
            root -> base.removing(root).stream().anyMatch(r -> recorded.person().may(r.who())));
  }

  /** What each answer that was asked was taken to mean. */
  Map<String, String> meant() {
    return replayed.steps().stream()
        .filter(s -> s.meaning().isPresent())
        .collect(Collectors.toMap(Taken::id, s -> s.meaning().get().outcome(), (a, b) -> a));
  }
}
