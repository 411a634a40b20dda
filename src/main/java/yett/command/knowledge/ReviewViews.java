package yett.command.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yett.bench.Priors;
import yett.calculation.Range;
import yett.calculation.SharePosterior;
import yett.console.Block;
import yett.knowledge.RuleBase;
import yett.review.Proposal;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows a trainer where closed cases disagree with the cards. */
public final class ReviewViews {
  private final RuleBase base;

  public ReviewViews(RuleBase base) {
    this.base = base;
  }

  public List<Block> proposals(List<Proposal> all) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      blocks.addAll(proposal(i + 1, all.get(i)));
    }
    return blocks;
  }

  private List<Block> proposal(int number, Proposal p) {
    List<Block.Row> rows = new ArrayList<>();
    SharePosterior posterior = p.posterior();
    for (int i = 0; i < sharesShown(p); i++) {
      Range range = posterior.range(i);
      rows.add(
          Block.row(
              p.outcomes().get(i).replace('-', ' '),
              posterior.counts()[i]
                  + " of "
                  + posterior.cases()
                  + " cases; the card expects "
                  + percent(posterior.judged()[i])
                  + "; both together "
                  + percent(posterior.mean(i))
                  + ", in 95 of 100 from "
                  + percent(range.low())
                  + " to "
                  + percent(range.high())));
    }
    rows.add(Block.row("On the card", words(p, p.card())));
    rows.add(Block.row("Instead", words(p, p.instead())));
    return List.of(
        Block.heading(number + "  " + p.name()),
        Block.paragraph(
            what(p)
                + ". The cases speak against the card with "
                + Figures.decibans(posterior.decibansAgainst())
                + "."),
        new Block.Rows(rows));
  }

  /** How many shares to show. For a prior or a complaint, one share says both. */
  private static int sharesShown(Proposal p) {
    return p.kind() == Proposal.Kind.PRIOR ? 1 : p.outcomes().size();
  }

  private String what(Proposal p) {
    return switch (p.kind()) {
      case PRIOR -> "How often " + Wording.quoted(base.causes().get(p.cause()).name()) + " arises";
      case ROW ->
          Wording.quoted(base.checks().get(p.check()).ask())
              + " with "
              + Wording.quoted(base.causes().get(p.cause()).name());
      case OTHERWISE ->
          Wording.quoted(base.checks().get(p.check()).ask())
              + " with none of the causes that show there";
    };
  }

  /** Finer than whole percent, because a review is often about what is rare. */
  private static String percent(double share) {
    return String.format(Locale.ROOT, share < 0.1 ? "%.1f\u00a0%%" : "%.0f\u00a0%%", 100 * share);
  }

  private static String words(Proposal p, double[] figures) {
    if (p.kind() == Proposal.Kind.PRIOR) {
      return figure(figures[0]) + ": " + Priors.words(figures[0]);
    }
    if (figures.length == 1) {
      return figure(figures[0]);
    }
    List<String> all = new ArrayList<>();
    for (int i = 0; i < figures.length; i++) {
      all.add(p.outcomes().get(i) + ": " + figure(figures[i]));
    }
    return "{" + String.join(", ", all) + "}";
  }

  private static String figure(double chance) {
    return String.format(Locale.ROOT, "%.4f", chance).replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
