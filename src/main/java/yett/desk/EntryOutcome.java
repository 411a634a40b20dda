package yett.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.interview.Entry;
import yett.interview.Meanwhile;

/**
 * What became of something that a person entered.
 *
 * @param delivered how many answers that had waited here the server has now
 * @param waiting how many wait on this computer, this one included
 * @param lost why the server is not there, when that is news
 * @param theirs what somebody else had entered meanwhile
 * @param added what of one's own was stored after theirs
 * @param clashes where both answered the same check, and not the same
 * @param unclosed whether one's own closing of the case was left open, because of theirs
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

  /** The same, where it met with somebody else's on the way. */
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
