package yett.desk;

import java.util.Collection;

/** Asks for permissions that only a person can give. Without a person, everything is refused. */
public interface Consent {
  /** Whether these files of rules, which are new or changed, may run. */
  boolean toRun(Collection<String> files);

  /**
   * Whether a rule base may lead people although it does not have all of the program's own
   * safeguards.
   *
   * @param lacking cards and rules of the program that protect people and are missing or changed
   */
  boolean toBeLed(Collection<String> lacking);

  /** Called before rules are compiled, because the person has to wait some seconds. */
  void waits();
}
