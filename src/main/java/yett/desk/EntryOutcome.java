package yett.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.intake.Meanwhile;

/**
 * What happened to something that a person entered.
 *
 * @param delivered how many answers that had waited here are now on the server
 * @param waiting how many answers wait on this computer, including this one
 * @param lost why the server cannot be reached, if the person does not know yet
 * @param theirs what somebody else had entered in the meantime
 * @param added which of one's own entries were stored after theirs
 * @param clashes checks that both answered, with different answers
 * @param unclosed whether one's own closing of the case was not stored because of theirs
 */
public record EntryOutcome(
    int delivered,
    int waiting,
    Optional<String> lost,
    List<Entry> theirs,
    List<Entry> added,
    List<Meanwhile.Clash> clashes,
    boolean unclosed) {

  public static EntryOutcome stored(int delivered) {
    return new EntryOutcome(delivered, 0, Optional.empty(), List.of(), List.of(), List.of(), false);
  }

  public static EntryOutcome kept(int waiting, Optional<String> lost) {
    return new EntryOutcome(0, waiting, lost, List.of(), List.of(), List.of(), false);
  }

  /** The same outcome, with what was found when it met somebody else's entries. */
  public EntryOutcome beside(Meanwhile.Together met) {
    return new EntryOutcome(
        delivered,
        waiting,
        lost,
        both(met.theirs(), theirs),
        theirs.isEmpty() ? met.added() : added,
        both(met.clashes(), clashes),
        unclosed || met.unclosed().isPresent());
  }

  private static <T> List<T> both(List<T> first, List<T> second) {
    List<T> all = new ArrayList<>(first);
    all.addAll(second);
    return List.copyOf(all);
  }
}
