package yett.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.interview.course.Expertise;
import yett.replay.RecordedCase;
import yett.replay.Score;
import yett.trial.Account.Key;

/**
 * The cases of a rule base, run and compared with the run that was accepted last.
 *
 * @param accepted whether there is an accepted run
 * @param changed cases that differ from it, those that went from right to wrong first
 * @param fresh names of cases that it does not know
 * @param gone names of cases that only it knows; empty if only some cases were run
 * @param wrong cases whose result is not as their file says, each with its name and the result
 * @param unseen names of cases whose result is right although nothing was looked at, or in which a
 *     repair was made before anything was looked at; they prove little about the cards
 * @param unsafe unsafe things that came up, which must never happen
 */
public record Tested(
    boolean accepted,
    List<Difference> changed,
    List<String> fresh,
    List<String> gone,
    List<String> wrong,
    List<String> unseen,
    List<String> unsafe,
    Score score,
    Runnable accept) {

  /**
   * @param whole whether these are all cases of the folder
   */
  public static Tested run(
      Expertise expertise,
      Path folder,
      List<RecordedCase> cases,
      boolean whole,
      Runnable progress) {
    Optional<AcceptedRun> accepted = AcceptedRun.in(folder);
    Map<Key, Set<String>> inView = accepted.map(AcceptedRun::inView).orElse(Map.of());
    return of(accepted, Trial.run(expertise, cases, inView, progress), folder, whole);
  }

  private static Tested of(
      Optional<AcceptedRun> accepted, Trial trial, Path folder, boolean whole) {
    List<Difference> changed = new ArrayList<>();
    List<String> fresh = new ArrayList<>();
    for (Account now : trial.accounts()) {
      Optional<Account> before = accepted.flatMap(a -> a.of(now.key()));
      before.flatMap(b -> Difference.between(b, now)).ifPresent(changed::add);
      if (before.isEmpty()) {
        fresh.add(now.name());
      }
    }
    changed.sort(
        Comparator.comparing(Difference::turn)
            .thenComparing(d -> !d.outcome())
            .thenComparing(Difference::file));
    return new Tested(
        accepted.isPresent(),
        List.copyOf(changed),
        List.copyOf(fresh),
        whole ? gone(accepted, trial) : List.of(),
        trial.accounts().stream()
            .filter(a -> !a.right().orElse(true))
            .map(Account::withResult)
            .toList(),
        trial.accounts().stream()
            .filter(a -> a.rightUnseen() || a.mendedUnseen())
            .map(Account::name)
            .toList(),
        trial.accounts().stream().map(Account::unsafe).flatMap(List::stream).toList(),
        Score.together(trial.scores()),
        () -> write(accepted, trial, folder, whole));
  }

  private static List<String> gone(Optional<AcceptedRun> accepted, Trial trial) {
    Set<Key> run = trial.accounts().stream().map(Account::key).collect(Collectors.toSet());
    return accepted.map(AcceptedRun::keys).orElse(Set.of()).stream()
        .filter(key -> !run.contains(key))
        .map(Key::name)
        .toList();
  }

  private static void write(
      Optional<AcceptedRun> accepted, Trial trial, Path folder, boolean whole) {
    List<Account> kept =
        whole ? List.of() : accepted.map(a -> List.copyOf(a.accounts())).orElse(List.of());
    try {
      AcceptedRun.write(folder, kept, trial.accounts());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + folder.resolve(AcceptedRun.FILE), e);
    }
  }

  /**
   * Whether everything is as accepted; without an accepted run, whether every result is as its file
   * says. Never if anything unsafe came up.
   */
  public boolean good() {
    boolean asBefore = changed.isEmpty() && fresh.isEmpty() && gone.isEmpty();
    return unsafe.isEmpty() && (accepted ? asBefore : wrong.isEmpty());
  }
}
