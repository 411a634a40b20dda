package yett.desk;

import java.util.Collection;

/** What only a person can allow; without one at hand, nothing is allowed. */
public interface Consent {
  /** Whether these files of rules, new or changed, may run. */
  boolean toRun(Collection<String> files);

  /**
   * Whether people may be led by a rule base that protects them otherwise than the program's.
   *
   * @param lacking cards and rules of the program that protect people and are missing or otherwise
   */
  boolean toBeLed(Collection<String> lacking);

  /** Rules are compiled now: the person waits for some seconds. */
  void waits();
}
