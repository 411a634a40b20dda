package yett.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.course.Expertise;
import yett.replay.InOrder;
import yett.replay.RecordedCase;
import yett.replay.Score;
import yett.trial.Account.Key;
import yett.trial.Trial.Tried;

/**
 * Compares what two rule bases ask and conclude on the same cases.
 *
 * @param cards which cards only one of them has
 * @param differences by case, those that went from right to wrong first
 * @param alone cases that only one of the two can run
 * @param sums how many cases differ in what, and the sums of minutes
 * @param elsewhere how many cases of both were not replayed, because nothing of the change can be
 *     at their gates
 * @param passedOver how many were not replayed, because the change does not seem to affect them;
 *     see {@link Screen}
 */
public record Comparison(
    List<String> cards,
    List<Difference> differences,
    List<String> alone,
    Score first,
    Score second,
    List<String> sums,
    int elsewhere,
    int passedOver) {

  /** One of the two rule bases. */
  public record Side(Expertise expertise, CasesBeside cases) {}

  /** How many cases of both were not replayed. */
  public int untouched() {
    return elsewhere + passedOver;
  }

  /** Which cases were not replayed, and why. It says so if only a quick look was taken. */
  public Optional<String> notReplayed() {
    String certain = elsewhere + " cases at whose gates nothing of the change can be";
    String quick =
        passedOver
            + " cases passed over at a quick look, in whose answers the change moves next to"
            + " nothing";
    String words =
        Stream.of(elsewhere > 0 ? certain : "", passedOver > 0 ? quick : "")
            .filter(w -> !w.isEmpty())
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }

  /** Names of cases that were right before and are wrong now. */
  public List<String> wrong() {
    return differences.stream()
        .filter(d -> d.turn() == Difference.Turn.WORSE)
        .map(Difference::name)
        .toList();
  }

  /** Follows a comparison while it is made; called on the thread that began it. */
  public interface Course {
    /** After each run, twice for a case of both. */
    void step();

    /**
     * After each quick look.
     *
     * @param touched how many of the cases seen so far will be replayed
     * @param left how many are still to be looked at
     */
    default void looked(int touched, int left) {}

    /**
     * After each replayed case.
     *
     * @param soFar works out what the cases that have been replayed show
     * @param open how many have not
     */
    default void replayed(Supplier<Comparison> soFar, int open) {}
  }

  /** Compares by replaying all cases. */
  public static Comparison of(Side first, Side second, Course course) {
    return new Pairs(first, second, KeptRuns.NONE, Map.of()).replayed(course);
  }

  /**
   * Compares by replaying only the cases that the change seems to affect, those first that it moves
   * most.
   *
   * @param first and second: each with its cases; a case of both is run under each
   * @param kept runs that do not have to be repeated; new ones are kept as they come, so that a
   *     comparison that is broken off can go on
   */
  public static Comparison ofTouched(Side first, Side second, KeptRuns kept, Course course) {
    Set<Key> both = first.cases().cases().stream().map(Key::of).collect(Collectors.toSet());
    both.retainAll(second.cases().cases().stream().map(Key::of).toList());
    Map<Key, Screen.Seen> seen = new HashMap<>();
    try (Screen screen = new Screen(first.expertise(), second.expertise())) {
      look(
          screen,
          second.cases().cases().stream().filter(c -> both.contains(Key.of(c))),
          seen,
          course);
    }
    return new Pairs(first, second, kept, seen).replayed(course);
  }

  private static void look(
      Screen screen, Stream<RecordedCase> cases, Map<Key, Screen.Seen> seen, Course course) {
    List<Callable<Map.Entry<Key, Screen.Seen>>> looks = new ArrayList<>();
    cases.forEach(recorded -> looks.add(() -> Map.entry(Key.of(recorded), screen.look(recorded))));
    InOrder.run(
        looks,
        InOrder.threads(),
        one -> {
          seen.put(one.getKey(), one.getValue());
          if (one.getValue().verdict() != Screen.Verdict.TO_REPLAY) {
            course.step();
            course.step();
          }
          int touched =
              (int)
                  seen.values().stream()
                      .filter(s -> s.verdict() == Screen.Verdict.TO_REPLAY)
                      .count();
          course.looked(touched, looks.size() - seen.size());
        });
  }

  /**
   * What the replayed cases show.
   *
   * @param pairs of runs of one case
   * @param alone runs of cases that only one of the two can run
   */
  static Comparison of(
      Side first,
      Side second,
      Map<Tried, Tried> pairs,
      List<String> alone,
      Map<Key, Screen.Seen> seen) {
    List<Difference> differences = new ArrayList<>();
    Additions fresh = Additions.of(first.expertise().base(), second.expertise().base());
    Map<Account, Account> accounts = new LinkedHashMap<>();
    pairs.forEach((a, b) -> accounts.put(a.account(), b.account()));
    accounts.forEach((a, b) -> Difference.between(a, b, fresh).ifPresent(differences::add));
    differences.sort(Comparator.comparing(Difference::turn).thenComparing(d -> !d.outcome()));
    return new Comparison(
        CardsApart.words(first.expertise().base(), second.expertise().base()),
        List.copyOf(differences),
        List.copyOf(alone),
        Score.together(pairs.keySet().stream().map(Tried::score).toList()),
        Score.together(pairs.values().stream().map(Tried::score).toList()),
        sums(accounts),
        count(seen, Screen.Verdict.ELSEWHERE),
        count(seen, Screen.Verdict.PASSED_OVER));
  }

  private static int count(Map<Key, Screen.Seen> seen, Screen.Verdict verdict) {
    return (int) seen.values().stream().filter(s -> s.verdict() == verdict).count();
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
