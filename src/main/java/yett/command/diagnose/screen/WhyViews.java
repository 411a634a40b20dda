package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.interview.moment.Moment;
import yett.interview.step.Purpose;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Explains why the present step comes now. */
public final class WhyViews {
  private static final String REPORT =
      "What people noticed and what happened lately says most for the least time.";
  private static final String STATE =
      "The next step needs the gate in this state; its steps are confirmed once, in order.";

  private final RuleBase base;
  private final BeliefViews beliefs;
  private final WhyCheck checks;
  private final StepWords words;

  public WhyViews(RuleBase base, BeliefViews beliefs) {
    this.base = base;
    this.beliefs = beliefs;
    this.checks = new WhyCheck(base);
    this.words = new StepWords(base);
  }

  /** Why the step of this moment comes now. */
  public List<Block> of(Moment moment) {
    return moment.step().accept(new Why(moment));
  }

  private final class Why implements SomeSteps<List<Block>> {
    private final Moment moment;

    Why(Moment moment) {
      this.moment = moment;
    }

    @Override
    public List<Block> ask(Step.Ask step) {
      List<Block> why = checks.of(step, moment);
      return step.advice().isEmpty() ? why : beliefs.withEffects(why, moment);
    }

    @Override
    public List<Block> lookRound(Step.LookRound step) {
      List<Block> blocks = new ArrayList<>(ask(step.first()));
      blocks.add(
          Block.paragraph(
              "The other looks are made at the same time because you are there anyway; each can"
                  + " add something."));
      return blocks;
    }

    @Override
    public List<Block> mend(Step.Mend step) {
      return beliefs.withEffects(whyRepair(step, moment), moment);
    }

    @Override
    public List<Block> askDangers(Step.AskDangers step) {
      return because("People come first.");
    }

    @Override
    public List<Block> askSite(Step.AskSite step) {
      return because(
          "Usual ranges, and what can be wrong at all, follow from what is installed here.");
    }

    @Override
    public List<Block> askPressing(Step.AskPressing step) {
      return because("How soon somebody has to be there follows from the site, whatever is wrong.");
    }

    @Override
    public List<Block> askComplaints(Step.AskComplaints step) {
      return because(REPORT);
    }

    @Override
    public List<Block> askHistory(Step.AskHistory step) {
      return because(REPORT);
    }

    @Override
    public List<Block> enter(Step.Enter step) {
      return state(step.purpose());
    }

    @Override
    public List<Block> leave(Step.Leave step) {
      return state(step.purpose());
    }

    /** Why the state is needed, and what the work for which it is needed can bring. */
    private List<Block> state(Purpose purpose) {
      List<Block> blocks = new ArrayList<>(because(STATE));
      Check check = base.checks().get(purpose.card());
      Repair repair = base.repairs().get(purpose.card());
      if (moment.state().isInspection() || moment.state().told().complaints().isEmpty()) {
        return blocks;
      }
      if (check != null && check.kind() == Check.Kind.CHECK) {
        blocks.addAll(checks.ahead(check, moment));
      } else if (repair != null) {
        blocks.add(Block.rows(Block.row("For", repair.name()), removes(repair, moment)));
      } else {
        blocks.add(Block.rows(Block.row("For", words.purpose(purpose))));
      }
      return blocks;
    }

    @Override
    public List<Block> retest(Step.Retest step) {
      return because("Whether a repair helped shows what was wrong.");
    }

    @Override
    public List<Block> settle(Step.Settle step) {
      return because(
          "Both answers cannot be right: " + step.contradiction().reason().words() + ".");
    }

    @Override
    public List<Block> other(Step step) {
      return because("This follows from the answers so far.");
    }

    private static List<Block> because(String words) {
      return List.of(Block.paragraph(words));
    }
  }

  private List<Block> whyRepair(Step.Mend mend, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Why this repair"));
    if (mend.plan().isEmpty()) {
      blocks.add(Block.paragraph(Wording.capital(StepWords.occasion(mend.occasion())) + "."));
      return blocks;
    }
    Advice plan = mend.plan().get();
    List<Block.Row> rows = new ArrayList<>();
    rows.add(removes(mend.repair(), moment));
    rows.add(
        Block.row("Expected", Figures.minutes(plan.expected()) + " of time, parts and hazards"));
    if (!plan.candidates().isEmpty()) {
      Advice.Candidate best = plan.candidates().get(0);
      rows.add(
          Block.row(
              "Best check left",
              base.checks().get(best.check()).ask()
                  + " It would cost "
                  + Figures.minutes(best.minutes())
                  + " and save less."));
    }
    blocks.add(new Block.Rows(rows));
    return blocks;
  }

  private Block.Row removes(Repair repair, Moment moment) {
    double[] now = moment.belief().remaining();
    String causes =
        repair.removes().entrySet().stream()
            .map(
                e ->
                    base.causes().get(e.getKey()).name()
                        + ", "
                        + Figures.percent(now[moment.belief().model().indexOf(e.getKey())])
                        + " likely (removed in "
                        + Figures.percent(e.getValue())
                        + " of such cases)")
            .collect(Collectors.joining("; "));
    return Block.row("Removes", causes.isEmpty() ? "nothing by itself" : causes);
  }
}
