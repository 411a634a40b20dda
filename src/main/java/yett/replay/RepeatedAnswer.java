package yett.replay;

import java.util.List;
import java.util.Optional;

/**
 * The answers of a case file to something that may be asked more than once: one answer for every
 * time, or a list in order, first for the gate as found, then after repairs.
 *
 * @param inOrder whether the n-th answer is for the n-th time
 */
public record RepeatedAnswer<T>(List<T> turns, boolean inOrder) {

  public RepeatedAnswer {
    turns = List.copyOf(turns);
  }

  static <T> RepeatedAnswer<T> always(T one) {
    return new RepeatedAnswer<>(List.of(one), false);
  }

  /**
   * The answer for a time; empty if there is none.
   *
   * @param asked how often it was asked before
   */
  Optional<T> turn(int asked) {
    if (!inOrder) {
      return Optional.of(turns.get(0));
    }
    return asked < turns.size() ? Optional.of(turns.get(asked)) : Optional.empty();
  }
}
