package yett.interview;

import java.util.Optional;
import java.util.function.Supplier;
import yett.belief.Belief;

/**
 * What is believed at a moment. It may be worked out as late as somebody asks: until the search for
 * the fault begins nobody does, and every fact about the gate or its history would have it worked
 * out anew.
 */
public final class Believed {
  private final Supplier<BeliefFold.Result> fold;
  private BeliefFold.Result result;

  Believed(Supplier<BeliefFold.Result> fold) {
    this.fold = fold;
  }

  /** A belief that is known, with no answers that hardly fit together. */
  static Believed of(Belief belief, Trail trail) {
    return new Believed(() -> new BeliefFold.Result(belief, trail, Optional.empty()));
  }

  private synchronized BeliefFold.Result result() {
    if (result == null) {
      result = fold.get();
    }
    return result;
  }

  /** Works it out now, so that it fails now if it fails. */
  Believed now() {
    result();
    return this;
  }

  public synchronized boolean isWorkedOut() {
    return result != null;
  }

  Belief belief() {
    return result().belief();
  }

  Trail trail() {
    return result().trail();
  }

  Optional<Conflict> conflict() {
    return result().conflict();
  }
}
