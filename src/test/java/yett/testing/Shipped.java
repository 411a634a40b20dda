package yett.testing;

import java.nio.file.Path;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.belief.CausalModel;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.saying.Hearing;

/** The shipped rule base, read and prepared once for all test classes of a run. */
public final class Shipped {
  /** The shipped cards and rules. */
  public static final RuleBase BASE = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));

  /** The shipped rule base, ready for reasoning. */
  public static final Expertise EXPERTISE = Expertise.of(BASE, Path.of("target/rule-cache"));

  /**
   * The same with causes ten times as rare, so that fewer sets of causes have to be listed and a
   * step takes a fraction of the time. Rules, the order of steps and safety stay the same.
   */
  public static final Expertise QUICK =
      new Expertise(BASE, EXPERTISE.rules(), rarer(EXPERTISE.model()), EXPERTISE.planner());

  /** Understands words about the shipped rule base. */
  public static final Hearing HEARING = Hearing.of(BASE);

  private Shipped() {}

  private static CausalModel rarer(CausalModel model) {
    return model.withOdds(
        model.causes().stream().collect(Collectors.toMap(Function.identity(), c -> 0.1)));
  }
}
