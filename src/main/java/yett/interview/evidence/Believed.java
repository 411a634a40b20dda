package yett.interview.evidence;

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

  /** A belief that is worked out when somebody first asks for it. */
  public Believed(Supplier<BeliefFold.Result> fold) {
    this.fold = fold;
  }

  /** A belief that is known, with no answers that hardly fit together. */
  public static Believed of(Belief belief, Trail trail) {
    return new Believed(() -> new BeliefFold.Result(belief, trail, Optional.empty()));
  }

  private synchronized BeliefFold.Result result() {
    if (result == null) {
      result = fold.get();
    }
    return result;
  }

  /** Works it out now, so that it fails now if it fails. */
  public Believed now() {
    result();
    return this;
  }

  public synchronized boolean isWorkedOut() {
    return result != null;
  }

  /** The belief after all that was answered and repaired. */
  public Belief belief() {
    return result().belief();
  }

  /** How the belief came about. */
  public Trail trail() {
    return result().trail();
  }

  /** The answers that hardly fit together, if there are some. */
  public Optional<Conflict> conflict() {
    return result().conflict();
  }
}
