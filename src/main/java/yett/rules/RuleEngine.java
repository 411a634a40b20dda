package yett.rules;

import java.util.List;
import java.util.stream.Collectors;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import yett.knowledge.RuleBase;

/** The compiled rules of a rule base, shared by all cases. */
public final class RuleEngine {
  private final RuleBase base;
  private final KieBase rules;

  private RuleEngine(RuleBase base, KieBase rules) {
    this.base = base;
    this.rules = rules;
  }

  /**
   * Compiles the rules, or takes them compiled from the cache if their text has not changed.
   *
   * @throws RuleErrors with every error of the compiler
   */
  public static RuleEngine of(RuleBase base, RuleCache cache) {
    return new RuleEngine(base, cache.load(base));
  }

  /** Whether these rules would have to be compiled first, which takes seconds. */
  public static boolean needsCompiling(RuleBase base, RuleCache cache) {
    return !cache.holds(base);
  }

  /** A judge for one case; close it when the case is left. */
  public Judge newJudge() {
    return new Judge(rules.newKieSession(), base);
  }

  /** Names of all rules. */
  public List<String> ruleNames() {
    return rules.getKiePackages().stream()
        .map(KiePackage::getRules)
        .flatMap(java.util.Collection::stream)
        .map(Rule::getName)
        .sorted()
        .collect(Collectors.toList());
  }
}
