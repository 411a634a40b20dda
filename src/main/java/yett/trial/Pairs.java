package yett.trial;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.trial.Account.Key;
import yett.trial.Comparison.Course;
import yett.trial.Comparison.Side;
import yett.trial.Trial.Tried;

/**
 * Runs each case under both rule bases, one case after the other, those first that the change moves
 * most: the first minute then says most of what all of them say.
 */
final class Pairs {
  /** How often new runs are stored, so that hardly any are lost if the comparison is broken off. */
  private static final Duration STORED = Duration.ofSeconds(10);

  /** A case of either or both. */
  private record Pair(Optional<RecordedCase> first, Optional<RecordedCase> second) {
    Key key() {
      return Key.of(second.or(() -> first).orElseThrow());
    }
  }

  private record Result(Key key, Optional<Tried> first, Optional<Tried> second) {}

  private final Side first;
  private final Side second;
  private final Map<Key, Screen.Seen> seen;
  private final Trial.Runner before;
  private final Trial.Runner now;

  /** In the order of the folders, which is the order of the report. */
  private final Map<Key, Pair> pairs = new LinkedHashMap<>();

  private final Map<Key, Result> results = new LinkedHashMap<>();
  private long stored = System.nanoTime();

  /**
   * @param seen what the quick look saw of the cases of both; empty to replay all
   */
  Pairs(Side first, Side second, KeptRuns kept, Map<Key, Screen.Seen> seen) {
    this.first = first;
    this.second = second;
    this.seen = seen;
    this.before = new Trial.Runner(first.expertise(), kept);
    this.now = new Trial.Runner(second.expertise(), kept);
    Map<Key, RecordedCase> earlier = new LinkedHashMap<>();
    first.cases().cases().forEach(c -> earlier.put(Key.of(c), c));
    for (RecordedCase recorded : second.cases().cases()) {
      Optional<RecordedCase> same = Optional.ofNullable(earlier.remove(Key.of(recorded)));
      pairs.put(Key.of(recorded), new Pair(same, Optional.of(recorded)));
    }
    earlier.forEach((key, c) -> pairs.put(key, new Pair(Optional.of(c), Optional.empty())));
    pairs
        .keySet()
        .removeIf(
            key -> seen.containsKey(key) && seen.get(key).verdict() != Screen.Verdict.TO_REPLAY);
  }

  Comparison replayed(Course course) {
    List<Callable<Result>> tasks = new ArrayList<>();
    pairs.values().stream()
        .sorted(Comparator.comparingDouble(pair -> -moves(pair.key())))
        .forEach(pair -> tasks.add(() -> run(pair)));
    try {
      InOrder.run(
          tasks,
          InOrder.threads(),
          result -> {
            results.put(result.key(), result);
            result.first().ifPresent(r -> course.step());
            result.second().ifPresent(r -> course.step());
            if (System.nanoTime() - stored > STORED.toNanos()) {
              keep();
            }
            course.replayed(this::comparison, tasks.size() - results.size());
          });
    } finally {
      keep();
    }
    return comparison();
  }

  /** A case of which nothing was seen, such as one of the change itself, comes first. */
  private double moves(Key key) {
    return seen.containsKey(key) ? seen.get(key).moves() : Double.MAX_VALUE;
  }

  private Result run(Pair pair) {
    Optional<Tried> one = pair.first().map(c -> before.run(c, Set.of()));
    Set<String> inView = one.map(t -> t.account().inView()).orElse(Set.of());
    return new Result(pair.key(), one, pair.second().map(c -> now.run(c, inView)));
  }

  private void keep() {
    before.keep();
    now.keep();
    stored = System.nanoTime();
  }

  private Comparison comparison() {
    Map<Tried, Tried> both = new LinkedHashMap<>();
    List<String> alone = new ArrayList<>();
    for (Key key : pairs.keySet()) {
      Result result = results.get(key);
      if (result == null) {
        continue;
      }
      if (result.first().isPresent() && result.second().isPresent()) {
        both.put(result.first().get(), result.second().get());
      } else {
        alone.add(
            key.name()
                + (result.first().isPresent() ? " (only in the first)" : " (only in the second)"));
      }
    }
    return Comparison.of(first, second, both, alone, seen);
  }
}
