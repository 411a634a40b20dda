package yett.interview;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import yett.belief.CardModel;
import yett.knowledge.Cause;
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
   * step takes a tenth of the time. Rules, order of things and safety are untouched by it.
   */
  static final Expertise QUICK =
      new Expertise(
          EXPERTISE.base(),
          EXPERTISE.rules(),
          CardModel.of(rarer(EXPERTISE.base())),
          EXPERTISE.planner());

  private Shipped() {}

  private static RuleBase rarer(RuleBase base) {
    Map<String, Cause> causes = new LinkedHashMap<>();
    base.causes()
        .forEach(
            (id, c) ->
                causes.put(
                    id,
                    new Cause(
                        id,
                        c.name(),
                        c.area(),
                        c.prior() / 10,
                        c.bringsAbout(),
                        c.retestFails(),
                        c.onlyIf(),
                        c.arises(),
                        c.prevent(),
                        c.source())));
    return new RuleBase(
        base.fingerprint(),
        causes,
        base.checks(),
        base.histories(),
        base.repairs(),
        base.setUps(),
        base.cautions(),
        base.stops(),
        base.siteQuestions(),
        base.planning(),
        base.rules());
  }
}
