package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import yett.console.Block;
import yett.console.Text;
import yett.interview.course.Interview;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;
import yett.wording.EvidenceWords;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows which causes are believed, and why. */
public final class BeliefViews {
  private static final int CAUSES = 8;

  private final RuleBase base;
  private final AccountViews accounts;
  private final EffectViews effects;

  public BeliefViews(RuleBase base) {
    this.base = base;
    this.accounts = new AccountViews(base);
    this.effects = new EffectViews(base);
  }

  /** The most probable causes as bars. */
  public Block bars(Moment moment, int most) {
    List<Block.Bar> bars =
        Interview.ranking(moment, base).stream()
            .filter(r -> r.chance() >= 0.005)
            .limit(most)
            .map(
                r ->
                    new Block.Bar(
                        r.cause().name(), Math.min(1, r.chance()), Figures.percent(r.chance())))
            .toList();
    return new Block.Bars(bars);
  }

  /** What is believed now, and what speaks for and against the leading cause. */
  public List<Block> belief(Moment moment) {
    List<Block> blocks = standing(moment);
    leading(moment, 1).forEach(cause -> blocks.addAll(of(moment, cause)));
    return blocks;
  }

  /** What is believed, with the full account of the leading causes. */
  public List<Block> accounts(Moment moment) {
    List<Block> blocks = standing(moment);
    for (Cause cause : leading(moment, 2)) {
      blocks.addAll(accounts.whole(moment, cause));
      blocks.addAll(effects.of(moment.trail(), cause));
    }
    return blocks;
  }

  /** What speaks for and against one cause, and the effects that it has on the machine. */
  public List<Block> of(Moment moment, Cause cause) {
    List<Block> blocks = new ArrayList<>(accounts.forAndAgainst(moment, cause));
    blocks.addAll(effects.of(moment.trail(), cause));
    return blocks;
  }

  /** Adds the effects that the leading cause has on the machine. */
  List<Block> withEffects(List<Block> why, Moment moment) {
    List<Block> blocks = new ArrayList<>(why);
    leading(moment, 1).forEach(cause -> blocks.addAll(effects.of(moment.trail(), cause)));
    return blocks;
  }

  private List<Cause> leading(Moment moment, int most) {
    return Interview.ranking(moment, base).stream()
        .limit(most)
        .filter(r -> r.chance() >= 0.05)
        .map(Interview.RankedCause::cause)
        .toList();
  }

  private static String weighed(Moment moment) {
    return " The "
        + moment.belief().hypotheses()
        + " most probable sets of causes are weighed; all others had "
        + Figures.percent(moment.belief().neglected())
        + " at the outset.";
  }

  private List<Block> standing(Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Probable causes"));
    blocks.add(bars(moment, CAUSES));
    blocks.add(
        Block.paragraph(
            Text.dim(
                "Chance that the cause was present when the gate was reported; several can be"
                    + " present at once."
                    + (EvidenceWords.at(moment) == EvidenceWords.WORDS ? "" : weighed(moment)))));
    moment.conflict().ifPresent(c -> blocks.add(Block.paragraph(new Wording(base).conflict(c))));
    base.addOns().forEach(a -> blocks.add(Block.paragraph(Text.dim("Add-on " + a.words() + "."))));
    return blocks;
  }
}
