package yett.rules;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;
import yett.knowledge.RuleBase;

/** The compiled rules of a rule base; may be shared by all cases. */
public final class RuleEngine {
  private final RuleBase base;
  private final List<Row> rows;
  private final KieBase rules;

  private RuleEngine(RuleBase base, List<Row> rows, KieBase rules) {
    this.base = base;
    this.rows = rows;
    this.rules = rules;
  }

  /**
   * Compiles the rules, or takes them from the cache if their text has not changed.
   *
   * @throws yett.knowledge.KnowledgeException if a table has a problem
   * @throws RuleErrors with every error of the compiler
   */
  public static RuleEngine of(RuleBase base, RuleCache cache) {
    return new RuleEngine(base, DecisionTables.rows(base), cache.load(base));
  }

  /** A judge for one case; the caller closes it. */
  public Judge newJudge() {
    return new Judge(rules.newKieSession(), base, rows);
  }

  /** Names of all rules, and of all rows of tables. */
  public List<String> ruleNames() {
    Stream<String> compiled =
        rules.getKiePackages().stream()
            .filter(p -> !p.getName().equals(TableRules.PACKAGE))
            .map(KiePackage::getRules)
            .flatMap(Collection::stream)
            .map(Rule::getName);
    return Stream.concat(compiled, rows.stream().map(r -> r.reason().rule())).sorted().toList();
  }
}
