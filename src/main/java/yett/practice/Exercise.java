package yett.practice;

import java.util.Set;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;

/**
 * A gate to practise on.
 *
 * @param told what is said of it at the beginning, and what is really wrong with it
 * @param drawn whether it was drawn from the cards; otherwise it is a test case
 * @param area of the cards in which the fault is
 */
public record Exercise(RecordedCase told, boolean drawn, long seed, String area, Level level) {

  /** What is really wrong. */
  public Set<String> truth() {
    return Set.copyOf(told.truth().orElseThrow());
  }

  /** The gate with its fault, as it was found. */
  public FaultyGate gate(RuleBase base) {
    return new FaultyGate(this, base);
  }
}
