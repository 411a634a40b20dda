package yett.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import yett.interview.course.Expertise;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.replay.Score;
import yett.trial.Account.Key;

/** Cases that were run under one rule base, each with its part of the score. */
record Trial(List<Account> accounts, List<Score.One> scores) {

  /** The result of one case. */
  record Tried(Account account, Score.One score) {}

  /**
   * Runs all cases, several at the same time; the result does not depend on how many.
   *
   * @param inView causes to have in view besides a case's own, by case
   * @param progress called after each case
   */
  static Trial run(
      Expertise expertise,
      List<RecordedCase> cases,
      Map<Key, Set<String>> inView,
      Runnable progress) {
    return run(expertise, cases, inView, KeptRuns.NONE, progress);
  }

  /**
   * The same, but takes kept runs where there are any, and keeps the others for the next time.
   *
   * @param kept runs under any rule bases
   */
  static Trial run(
      Expertise expertise,
      List<RecordedCase> cases,
      Map<Key, Set<String>> inView,
      KeptRuns kept,
      Runnable progress) {
    Runner runner = new Runner(expertise, kept);
    List<Callable<Tried>> tasks = new ArrayList<>();
    for (RecordedCase recorded : cases) {
      Set<String> also = inView.getOrDefault(Key.of(recorded), Set.of());
      tasks.add(() -> runner.run(recorded, also));
    }
    List<Tried> tried = new ArrayList<>();
    InOrder.run(
        tasks,
        InOrder.threads(),
        one -> {
          tried.add(one);
          progress.run();
        });
    runner.keep();
    return of(tried);
  }

  static Trial of(List<Tried> tried) {
    return new Trial(
        tried.stream().map(Tried::account).toList(), tried.stream().map(Tried::score).toList());
  }

  /** Runs cases under one rule base, one at a time or several at once. */
  static final class Runner {
    private final Replayer replayer;
    private final KeptRuns.Of runs;

    Runner(Expertise expertise, KeptRuns kept) {
      this.replayer = new Replayer(expertise).withoutBeliefs();
      this.runs = kept.of(expertise.base());
    }

    /**
     * @param also causes to have in view besides the case's own
     */
    Tried run(RecordedCase recorded, Set<String> also) {
      Optional<Tried> known = runs.get(recorded, also);
      if (known.isPresent()) {
        return known.get();
      }
      Replayed replayed = replayer.run(recorded);
      Tried tried = new Tried(Account.of(recorded, replayed, also), Score.one(replayed));
      runs.put(recorded, tried);
      return tried;
    }

    /** Stores what was run since the last time, if that is possible. */
    void keep() {
      runs.keep();
    }
  }
}
