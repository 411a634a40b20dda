package yett.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import yett.interview.Expertise;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.trial.Account.Key;

/**
 * Cases run under one rule base.
 *
 * @param replayed without the moments, which hold whole beliefs
 */
record Trial(List<Account> accounts, List<Replayed> replayed) {
  private record Tried(Account account, Replayed replayed) {}

  /**
   * Runs all cases, several at once; the result does not depend on how many.
   *
   * @param inView causes to have in view besides a case's own, by case
   * @param progress told after each case
   */
  static Trial run(
      Expertise expertise,
      List<RecordedCase> cases,
      Map<Key, Set<String>> inView,
      Runnable progress) {
    Replayer replayer = new Replayer(expertise);
    List<Callable<Tried>> tasks = new ArrayList<>();
    for (RecordedCase recorded : cases) {
      Set<String> also = inView.getOrDefault(Key.of(recorded), Set.of());
      tasks.add(
          () -> {
            Replayed replayed = replayer.run(recorded);
            return new Tried(Account.of(recorded, replayed, also), replayed.withoutMoment());
          });
    }
    List<Account> accounts = new ArrayList<>();
    List<Replayed> replayed = new ArrayList<>();
    InOrder.run(
        tasks,
        InOrder.threads(),
        tried -> {
          accounts.add(tried.account());
          replayed.add(tried.replayed());
          progress.run();
        });
    return new Trial(List.copyOf(accounts), List.copyOf(replayed));
  }
}
