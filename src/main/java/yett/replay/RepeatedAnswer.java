package yett.replay;

import java.util.List;
import java.util.Optional;

/**
 * What a case file says to something that may be asked more than once: one thing for every time, or
 * a list in order: how the gate was found, then how it is found after repairs.
 *
 * @param inOrder whether the n-th time gets the n-th
 */
public record RepeatedAnswer<T>(List<T> turns, boolean inOrder) {

  public RepeatedAnswer {
    turns = List.copyOf(turns);
  }

  static <T> RepeatedAnswer<T> always(T one) {
    return new RepeatedAnswer<>(List.of(one), false);
  }

  /**
   * What is said the n-th time.
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
