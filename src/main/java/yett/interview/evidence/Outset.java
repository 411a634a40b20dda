package yett.interview.evidence;

import java.util.Map;
import java.util.function.Function;
import yett.belief.Belief;
import yett.belief.CausalModel;
import yett.belief.GateModels;
import yett.belief.LastFew;
import yett.belief.Likely;

/**
 * The belief about a reported gate before any answer, for the odds that the rules give for its
 * site. Listing the sets of causes is slower than an answer may take, so the last few lists are
 * kept.
 */
public final class Outset {
  private static final int KEPT = 8;

  private final GateModels models;
  private final Function<CausalModel, Belief> listed;

  private final LastFew<Map<String, Double>, Belief> beliefs = new LastFew<>(KEPT);

  /** The beliefs about gates of these models. */
  public Outset(GateModels models) {
    this(models, new Likely()::atReport);
  }

  private Outset(GateModels models, Function<CausalModel, Belief> listed) {
    this.models = models;
    this.listed = listed;
  }

  /** A copy with far fewer sets of causes, for quick estimates. */
  public Outset rough() {
    return new Outset(models, Belief::roughly);
  }

  /** The causal model with every cause in it, whatever the gate. */
  public CausalModel model() {
    return models.whole();
  }

  /**
   * @param odds factors of the causes' odds
   */
  public CausalModel model(Map<String, Double> odds) {
    return models.at(odds);
  }

  /**
   * @param odds factors of the causes' odds
   */
  public Belief belief(Map<String, Double> odds) {
    return beliefs.get(Map.copyOf(odds), o -> listed.apply(models.at(o)));
  }
}
