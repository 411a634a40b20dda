package yett.interview.course;

import java.nio.file.Path;
import java.util.Map;
import yett.belief.Belief;
import yett.belief.CausalModel;
import yett.belief.GateModels;
import yett.interview.evidence.Outset;
import yett.knowledge.RuleBase;
import yett.plan.Planner;
import yett.rules.RuleCache;
import yett.rules.RuleEngine;

/**
 * A rule base ready for reasoning: rules compiled, causal model built. It may be shared by cases
 * and threads.
 */
public final class Expertise {
  private final RuleBase base;
  private final RuleEngine rules;
  private final Outset outset;
  private final Planner planner;

  private Expertise(RuleBase base, RuleEngine rules, Outset outset, Planner planner) {
    this.base = base;
    this.rules = rules;
    this.outset = outset;
    this.planner = planner;
  }

  /** With one model for all gates. */
  public Expertise(RuleBase base, RuleEngine rules, CausalModel model, Planner planner) {
    this(base, rules, new Outset(GateModels.of(model)), planner);
  }

  public static Expertise of(RuleBase base, RuleCache cache) {
    return new Expertise(
        base, RuleEngine.of(base, cache), new Outset(GateModels.of(base)), new Planner(base));
  }

  /**
   * Compiles the rules and builds the model.
   *
   * @param cache folder for compiled rules
   */
  public static Expertise of(RuleBase base, Path cache) {
    return of(base, new RuleCache(cache));
  }

  /**
   * A faster, less exact copy with fewer sets of causes, to see quickly whether a change has any
   * effect.
   */
  public Expertise rough() {
    return new Expertise(base, rules, outset.rough(), planner);
  }

  public RuleBase base() {
    return base;
  }

  public RuleEngine rules() {
    return rules;
  }

  public CausalModel model() {
    return outset.model();
  }

  /**
   * The causal model for a gate.
   *
   * @param odds factors by which the rules change the odds of causes there
   */
  public CausalModel model(Map<String, Double> odds) {
    return outset.model(odds);
  }

  /**
   * The belief about a gate with a reported fault, before any answer.
   *
   * @param odds factors by which the rules change the odds of causes there
   */
  public Belief atReport(Map<String, Double> odds) {
    return outset.belief(odds);
  }

  public Planner planner() {
    return planner;
  }

  Outset outset() {
    return outset;
  }

  public Interview newInterview() {
    return new Interview(this, true);
  }

  /**
   * One for replays: it does not look for answers that hardly fit together, which takes a fifth of
   * the time, and works out a belief when somebody asks for it. Nothing that is believed, asked or
   * done depends on either.
   */
  public Interview newInterviewWithoutConflicts() {
    return new Interview(this, false);
  }
}
