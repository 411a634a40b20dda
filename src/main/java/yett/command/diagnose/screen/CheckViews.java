package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.console.Block;
import yett.console.Text;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Columns;
import yett.knowledge.RuleBase;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.UsualRangeWords;
import yett.wording.Wording;

/**
 * Shows a check or a proof as a question: what to do, what is usual, and what each answer would
 * mean.
 */
public record CheckViews(RuleBase base, CautionViews cautions) {
  List<Block> ask(Step.Ask step, Moment moment, int number) {
    Check check = step.check();
    boolean proof = check.kind() == Check.Kind.PROOF;
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading((proof ? "Proof" : "Check " + number) + effort(check)));
    if (!proof) {
      occasion(step.occasion()).ifPresent(blocks::add);
    }
    new StillInForce(base).afterDanger(moment).ifPresent(blocks::add);
    blocks.add(Block.paragraph(Text.strong(check.ask())));
    List<Block.Row> rows = howAndUsual(step);
    rows.addAll(ForceViews.rows(check, moment));
    blocks.add(new Block.Rows(rows));
    blocks.addAll(cautions.written(step.cautions()));
    blocks.add(answers(step, moment));
    return blocks;
  }

  /**
   * How a check is made, and what it usually reads on this gate; rows to which more can be added.
   */
  static List<Block.Row> howAndUsual(Step.Ask step) {
    Check check = step.check();
    List<Block.Row> rows = new ArrayList<>();
    if (!check.how().isEmpty()) {
      rows.add(Block.row("How", check.how()));
    }
    step.expectation()
        .ifPresent(e -> rows.add(Block.row("Usual", UsualRangeWords.reasoned(check, e))));
    check
        .columns()
        .filter(c -> check.measured())
        .ifPresent(
            c ->
                rows.add(
                    Block.row("Type", "one reading, or both with a slash: " + names(c) + ".")));
    return rows;
  }

  /** The two columns, as a person types answers to them. */
  public static String names(Columns columns) {
    return String.join("/", columns.names());
  }

  /** Why the check comes up, if for another reason than what it tells. */
  static Optional<Block> occasion(Occasion occasion) {
    return Optional.of(StepWords.occasion(occasion))
        .filter(words -> !words.isEmpty())
        .map(words -> Block.paragraph(Text.dim(Wording.capital(words) + ".")));
  }

  private static String effort(Check check) {
    String minutes = check.minutes() > 0 ? " · " + Figures.minutes(check.minutes()) : "";
    return minutes + Wording.instrument(check).map(i -> " · " + i).orElse("");
  }

  /**
   * The possible answers, each with its chance and with the cause that would then be most probable.
   * The latter is left out for a proof and for a check after a repair, because these are not made
   * to find a cause.
   */
  private Block answers(Step.Ask step, Moment moment) {
    Check check = step.check();
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Prospects.Prospect prospect : Prospects.of(moment.belief(), check, step.expectation())) {
      number++;
      String label = check.measured() ? "·" : Integer.toString(number);
      String words =
          check.measured()
              ? prospect.range().isEmpty()
                  ? prospect.outcome().id()
                  : prospect.range() + " (" + prospect.outcome().id().replace('-', ' ') + ")"
              : prospect.outcome().text();
      items.add(
          Block.item(
              label,
              words,
              Figures.percent(prospect.chance())
                  + (step.occasion().looksForCause()
                      ? "; then " + leading(moment, prospect.left())
                      : "")));
    }
    return new Block.Numbered(items);
  }

  private String leading(Moment moment, double[] chances) {
    int best = 0;
    for (int c = 1; c < chances.length; c++) {
      if (chances[c] > chances[best]) {
        best = c;
      }
    }
    String id = moment.belief().model().causes().get(best);
    return base.causes().get(id).name().toLowerCase(Locale.ROOT)
        + " "
        + Figures.percent(chances[best]);
  }
}
