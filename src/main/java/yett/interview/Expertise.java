package yett.interview;

import java.nio.file.Path;
import yett.belief.CardModel;
import yett.belief.CausalModel;
import yett.knowledge.RuleBase;
import yett.plan.Planner;
import yett.rules.RuleCache;
import yett.rules.RuleEngine;

/** A rule base made ready to reason with: its rules compiled, its model built. Shared by cases. */
public record Expertise(RuleBase base, RuleEngine rules, CausalModel model, Planner planner) {

  public static Expertise of(RuleBase base, RuleCache cache) {
    return new Expertise(base, RuleEngine.of(base, cache), CardModel.of(base), new Planner(base));
  }

  /**
   * @param cache folder for compiled rules
   */
  public static Expertise of(RuleBase base, Path cache) {
    return of(base, new RuleCache(cache));
  }

  public Interview newInterview() {
    return new Interview(this);
  }
}
