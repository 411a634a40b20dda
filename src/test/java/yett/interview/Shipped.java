package yett.interview;

import java.nio.file.Path;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.belief.CausalModel;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** The shipped rule base, made ready once for all tests of the interview. */
final class Shipped {
  /** The shipped cards and rules as they are. */
  static final Expertise EXPERTISE =
      Expertise.of(
          RuleBase.read(KnowledgeSource.folder(Path.of("knowledge"))),
          Path.of("target/rule-cache"));

  /**
   * The same with causes ten times as rare, so that fewer sets of causes have to be listed and a
   * step takes a fraction of the time. Rules, order of things and safety are untouched by it.
   */
  static final Expertise QUICK =
      new Expertise(
          EXPERTISE.base(), EXPERTISE.rules(), rarer(EXPERTISE.model()), EXPERTISE.planner());

  private Shipped() {}

  private static CausalModel rarer(CausalModel model) {
    return model.withOdds(
        model.causes().stream().collect(Collectors.toMap(Function.identity(), c -> 0.1)));
  }
}
