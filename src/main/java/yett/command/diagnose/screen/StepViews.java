package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/**
 * Shows each step of an interview, with its parts in the order in which they are best read or
 * heard.
 */
public final class StepViews {
  private final RuleBase base;
  private final StepWords reasons;
  private final CautionViews cautions;
  private final CheckViews checks;
  private final PlanViews plans;

  public StepViews(RuleBase base, CautionViews cautions) {
    this.base = base;
    this.reasons = new StepWords(base);
    this.cautions = cautions;
    this.checks = new CheckViews(base, cautions);
    this.plans = new PlanViews(base);
  }

  public List<Block> dangers(Step.AskDangers step, Role role) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Before anything else"));
    boolean reserved = step.dangers().stream().noneMatch(c -> c.who() == Role.CALLER);
    blocks.add(
        Block.paragraph(
            reserved
                ? step.dangers().stream()
                    .map(c -> c.ask() + " " + c.how())
                    .collect(Collectors.joining(" "))
                : (role == Role.CALLER ? "Read out. " : "")
                    + "Is any of this true at the gate now? "
                    + "Look from two metres away and touch nothing."));
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Check danger : step.dangers()) {
      for (Check.Outcome outcome : danger.outcomes().subList(1, danger.outcomes().size())) {
        items.add(Block.item(Integer.toString(++number), Wording.capital(outcome.text())));
      }
    }
    blocks.add(new Block.Numbered(items));
    return blocks;
  }

  public List<Block> ask(Step.Ask step, Moment moment, int number) {
    return checks.ask(step, moment, number);
  }

  /** The purpose of a set-up and its dangers. */
  public List<Block> entering(Step.Enter step) {
    SetUp setUp = step.setUp();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.heading(
            (step.again() ? "Check again: " : "Set-up: ")
                + setUp.name()
                + " · "
                + Figures.minutes(setUp.enterMinutes())));
    if (step.again()) {
      blocks.add(
          Block.paragraph(
              "It was left like this. Check each step: leave what is still in place and redo"
                  + " what is not. Repeat every test for dead."));
    }
    if (!step.instead().isEmpty()) {
      blocks.add(
          Block.paragraph(
              (step.instead().contains(SetUp.COVER_OFF)
                      ? "The cover stays off; hands stay outside until it is proved dead."
                      : "The mains stays locked off.")
                  + " Check each step: leave what is already in place. Repeat every test for dead."));
    }
    blocks.add(Block.rows(Block.row("For", reasons.purpose(step.purpose()))));
    blocks.addAll(cautions.entering(step));
    return blocks;
  }

  /** The set-up that is left and the reason; the steps follow. */
  public List<Block> leave(Step.Leave step) {
    SetUp setUp = step.setUp();
    return List.of(
        Block.heading("Leave: " + setUp.name() + " · " + Figures.minutes(setUp.leaveMinutes())),
        Block.rows(Block.row("For", reasons.purpose(step.purpose()))));
  }

  /** The plan of work, then the repair in hand. */
  public List<Block> mend(Step.Mend step, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    step.plan().ifPresent(plan -> blocks.addAll(plans.of(plan, moment)));
    Repair repair = step.repair();
    blocks.add(
        Block.heading("Repair: " + repair.name() + " · " + Figures.minutes(repair.minutes())));
    CheckViews.occasion(step.occasion()).ifPresent(blocks::add);
    new StillInForce(base).afterDanger(moment).ifPresent(blocks::add);
    blocks.addAll(cautions.written(step.cautions()));
    if (!repair.parts().isEmpty()) {
      String parts =
          repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; "));
      blocks.add(Block.rows(Block.row("Parts", parts)));
    }
    blocks.add(Block.numbered(repair.steps()));
    return blocks;
  }

  public List<Block> stop(Step.MakeSafe step) {
    return List.of(
        Block.rule(),
        Block.signal(
            SignalWord.DANGER, step.stop().name() + ". " + Wording.capital(step.because()) + "."),
        Block.paragraph("Now, in this order:"),
        Block.numbered(step.now()));
  }
}
