package yett.trial;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yett.knowledge.RuleBase;

/**
 * What only the later of two rule bases has and what can change the result of a case.
 *
 * @param rules texts of files with rules or tables, by path
 */
record Additions(Set<String> causes, Set<String> checks, Map<String, String> rules) {
  /** Used if the earlier rule base is not known. */
  static final Additions UNKNOWN = new Additions(Set.of(), Set.of(), Map.of());

  static Additions of(RuleBase before, RuleBase now) {
    Map<String, String> rules = new TreeMap<>(now.rules());
    rules.putAll(now.tables());
    rules.keySet().removeAll(before.rules().keySet());
    rules.keySet().removeAll(before.tables().keySet());
    return new Additions(
        without(now.causes().keySet(), before.causes().keySet()),
        without(now.checks().keySet(), before.checks().keySet()),
        rules);
  }

  boolean isEmpty() {
    return causes.isEmpty() && checks.isEmpty() && rules.isEmpty();
  }

  private static Set<String> without(Set<String> all, Set<String> some) {
    Set<String> rest = new TreeSet<>(all);
    rest.removeAll(some);
    return rest;
  }
}
