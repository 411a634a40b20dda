package yett.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import yett.interview.Expertise;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Score;
import yett.trial.Account.Key;

/**
 * Two rule bases told apart by what they ask and conclude on the same cases.
 *
 * @param cards which cards only one of them has
 * @param differences by case, those that went from right to wrong first
 * @param alone cases that only one of the two can run
 * @param sums what differs in how many cases, and the sums of minutes
 * @param untouched how many cases of both were not replayed, because the change cannot touch them
 */
public record Comparison(
    List<String> cards,
    List<Difference> differences,
    List<String> alone,
    Score first,
    Score second,
    List<String> sums,
    int untouched) {

  /** Names of cases that were right before and are not now. */
  public List<String> wrong() {
    return differences.stream()
        .filter(d -> d.turn() == Difference.Turn.WORSE)
        .map(Difference::name)
        .toList();
  }

  /** All cases are replayed. */
  public static Comparison of(
      Expertise first,
      CasesBeside ofFirst,
      Expertise second,
      CasesBeside ofSecond,
      Runnable progress) {
    return replayed(first, ofFirst, second, ofSecond, progress, 0);
  }

  /**
   * The same, with only those cases replayed of which the change can make another thing.
   *
   * @param first and second: each with its cases; the same case in both is run under each
   * @param progress told after each run, twice for a case of both
   */
  public static Comparison ofTouched(
      Expertise first,
      CasesBeside ofFirst,
      Expertise second,
      CasesBeside ofSecond,
      Runnable progress) {
    if (!Screen.canTell(first.base(), second.base())) {
      return of(first, ofFirst, second, ofSecond, progress);
    }
    Set<Key> both = ofFirst.cases().stream().map(Key::of).collect(Collectors.toSet());
    both.retainAll(ofSecond.cases().stream().map(Key::of).toList());
    Screen screen = new Screen(first, second);
    Set<Key> untouched = new HashSet<>();
    List<Callable<Optional<Key>>> looks = new ArrayList<>();
    for (RecordedCase recorded : ofSecond.cases()) {
      looks.add(
          () ->
              both.contains(Key.of(recorded)) && !screen.mayDiffer(recorded)
                  ? Optional.of(Key.of(recorded))
                  : Optional.empty());
    }
    InOrder.run(
        looks,
        InOrder.threads(),
        key -> {
          key.ifPresent(untouched::add);
          key.ifPresent(k -> progress.run());
          key.ifPresent(k -> progress.run());
        });
    return replayed(
        first,
        ofFirst.without(untouched),
        second,
        ofSecond.without(untouched),
        progress,
        untouched.size());
  }

  private static Comparison replayed(
      Expertise first,
      CasesBeside ofFirst,
      Expertise second,
      CasesBeside ofSecond,
      Runnable progress,
      int untouched) {
    Trial before = Trial.run(first, ofFirst.cases(), Map.of(), progress);
    Map<Key, Set<String>> inView =
        before.accounts().stream().collect(Collectors.toMap(Account::key, Account::inView));
    Trial now = Trial.run(second, ofSecond.cases(), inView, progress);
    Map<Key, Account> earlier =
        before.accounts().stream().collect(Collectors.toMap(Account::key, a -> a));
    Map<Account, Account> pairs = new LinkedHashMap<>();
    List<String> alone = new ArrayList<>();
    for (Account account : now.accounts()) {
      Account same = earlier.remove(account.key());
      if (same == null) {
        alone.add(account.name() + " (only in the second)");
      } else {
        pairs.put(same, account);
      }
    }
    earlier.values().forEach(a -> alone.add(a.name() + " (only in the first)"));
    List<Difference> differences = new ArrayList<>();
    Additions fresh = Additions.of(first.base(), second.base());
    pairs.forEach((a, b) -> Difference.between(a, b, fresh).ifPresent(differences::add));
    differences.sort(Comparator.comparing(Difference::turn).thenComparing(d -> !d.outcome()));
    return new Comparison(
        CardsApart.words(first.base(), second.base()),
        List.copyOf(differences),
        List.copyOf(alone),
        score(before, pairs.keySet().stream().map(Account::key).toList()),
        score(now, pairs.values().stream().map(Account::key).toList()),
        sums(pairs),
        untouched);
  }

  /** Of the cases of both alone, so that like is held against like. */
  private static Score score(Trial trial, List<Key> both) {
    List<Replayed> replayed =
        trial.replayed().stream().filter(r -> both.contains(new Key(r.file(), r.name()))).toList();
    return Score.of(replayed);
  }

  private static List<String> sums(Map<Account, Account> pairs) {
    return List.of(
        count("another first question", pairs, Comparison::asksFirst),
        count("another path", pairs, (a, b) -> !a.path().equals(b.path())),
        count("another first cause", pairs, (a, b) -> !a.first().equals(b.first())),
        count("a chance moved by 5 points or more", pairs, Comparison::moved),
        count("other repairs", pairs, (a, b) -> !a.repairs().equals(b.repairs())),
        count("other stops", pairs, (a, b) -> !a.stops().equals(b.stops())),
        String.format(
            Locale.ROOT,
            "minutes of all cases together: %.0f, then %.0f",
            pairs.keySet().stream().mapToDouble(Account::minutes).sum(),
            pairs.values().stream().mapToDouble(Account::minutes).sum()));
  }

  private static boolean asksFirst(Account a, Account b) {
    Optional<String> one = a.path().stream().findFirst();
    return !one.equals(b.path().stream().findFirst());
  }

  private static boolean moved(Account a, Account b) {
    return Difference.mostShift(a.ranking(), b.ranking()) >= Difference.POINTS;
  }

  private static String count(
      String what, Map<Account, Account> pairs, BiPredicate<Account, Account> differs) {
    long count =
        pairs.entrySet().stream().filter(e -> differs.test(e.getKey(), e.getValue())).count();
    return what + ": " + count + " of " + pairs.size();
  }
}
