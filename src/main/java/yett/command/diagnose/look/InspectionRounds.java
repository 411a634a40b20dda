package yett.command.diagnose.look;

import java.util.List;
import yett.command.diagnose.screen.InspectionViews;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.inspection.Inspection;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.RuleBase;

/**
 * Shows a round of looks in an inspection. No cause is suspected there, and each look passes or
 * fails.
 */
public final class InspectionRounds extends RoundViews {
  private final RuleBase base;
  private final InspectionViews views;

  public InspectionRounds(Sitting sitting, InspectionViews views) {
    super(sitting);
    this.base = sitting.base();
    this.views = views;
  }

  @Override
  String why(Step.Ask first, Moment moment) {
    return Inspection.of(base, moment).orElseThrow().progress()
        + " inspected. \"remark 2 WORDS\" for a remark.";
  }

  @Override
  List<Block> taken(Moment before, Moment after, Step.LookRound round) {
    return views.taken(after, round.looks().stream().map(Step.Ask::card).toList());
  }
}
