package yett.command.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Belief;
import yett.belief.Decibans;
import yett.console.Block;
import yett.console.Text;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.Occasion;
import yett.interview.Prospects;
import yett.interview.SomeSteps;
import yett.interview.Step;
import yett.interview.Trail;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.rules.Conclusion.Odds;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Why this question, what is believed, and how it came to that. */
public final class ReasonViews {
  private static final int CAUSES = 8;
  private static final int STRONGEST = 3;
  private static final int CANDIDATES = 5;

  private final RuleBase base;
  private final StepViews steps;
  private final EffectViews effects;

  public ReasonViews(RuleBase base, StepViews steps) {
    this.base = base;
    this.steps = steps;
    this.effects = new EffectViews(base);
  }

  public List<Block> why(Moment moment) {
    return moment.step().accept(new Why(moment));
  }

  private final class Why implements SomeSteps<List<Block>> {
    private final Moment moment;

    Why(Moment moment) {
      this.moment = moment;
    }

    @Override
    public List<Block> ask(Step.Ask step) {
      List<Block> why = whyCheck(step, moment);
      return step.advice().isEmpty() ? why : withEffects(why, moment);
    }

    @Override
    public List<Block> lookRound(Step.LookRound step) {
      List<Block> blocks = new ArrayList<>(ask(step.first()));
      blocks.add(
          Block.paragraph(
              "The other looks are made with it because you stand there anyway; each can tell"
                  + " something too."));
      return blocks;
    }

    @Override
    public List<Block> mend(Step.Mend step) {
      return withEffects(whyRepair(step, moment), moment);
    }

    @Override
    public List<Block> askDangers(Step.AskDangers step) {
      return because("People come first: what endangers them ends the interview.");
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
      return because("What people noticed and what happened lately tells most for least time.");
    }

    @Override
    public List<Block> askHistory(Step.AskHistory step) {
      return because("What people noticed and what happened lately tells most for least time.");
    }

    @Override
    public List<Block> enter(Step.Enter step) {
      return because(
          "The next step needs this state of the work; its steps are confirmed once, in order.");
    }

    @Override
    public List<Block> leave(Step.Leave step) {
      return because(
          "The next step needs this state of the work; its steps are confirmed once, in order.");
    }

    @Override
    public List<Block> retest(Step.Retest step) {
      return because("A repair that cured, or did not, tells what was wrong.");
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

  /** Besides, what the leading cause makes of what the machine does. */
  private List<Block> withEffects(List<Block> why, Moment moment) {
    List<Block> blocks = new ArrayList<>(why);
    leading(moment, 1).forEach(cause -> blocks.addAll(effects.of(moment.trail(), cause)));
    return blocks;
  }

  private List<Block> whyCheck(Step.Ask ask, Moment moment) {
    Check check = ask.check();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Why this question"));
    if (ask.advice().isEmpty()) {
      blocks.add(
          Block.paragraph(
              check.kind() == Check.Kind.PROOF
                  ? "No gate returns to service before this is proved (" + check.source() + ")."
                  : Wording.capital(StepWords.occasion(ask.occasion())) + "."));
      return blocks;
    }
    Belief belief = moment.belief();
    List<Prospects.Prospect> prospects = Prospects.of(belief, check, ask.expectation());
    String separates =
        Prospects.separates(belief, prospects, 4).stream()
            .map(c -> base.causes().get(belief.model().causes().get(c)))
            .map(Cause::name)
            .collect(Collectors.joining("; "));
    Advice advice = ask.advice().get();
    Advice.Candidate chosen = advice.candidates().get(0);
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("Separates", separates.isEmpty() ? "little" : separates));
    rows.add(
        Block.row(
            "Costs", Figures.minutes(chosen.minutes()) + ", with changes of set-up and hazards"));
    boolean askedFor = ask.occasion().kind() == Occasion.Kind.ASKED_FOR;
    rows.add(
        Block.row(
            "Worth",
            (askedFor
                    ? "you asked for it; it saves "
                        + Figures.minutes(Math.max(0, chosen.saves()))
                        + " on average against repairing at once, which"
                    : worth(advice, chosen))
                + " would be expected to cost "
                + Figures.minutes(advice.repairingNow())
                + " (time, parts and hazards)"));
    runnersUp(advice)
        .ifPresent(words -> rows.add(Block.row(askedFor ? "The plan's own" : "Next best", words)));
    blocks.add(new Block.Rows(rows));
    for (Prospects.Prospect prospect : prospects) {
      String range = prospect.range().isEmpty() ? "" : prospect.range() + ": ";
      String text = Wording.meaning(check, prospect.outcome().id());
      blocks.add(
          Block.paragraph(
              Text.strong(range + text)
                  .and(", " + Figures.percent(prospect.chance()) + ". Then ")
                  .and(topThree(belief, prospect.then()))));
    }
    return blocks;
  }

  private String worth(Advice advice, Advice.Candidate chosen) {
    if (advice.confirming()) {
      return "it confirms or clears what the next repair is for ("
          + base.repairs().get(advice.jobs().get(0).repair()).name().toLowerCase(Locale.ROOT)
          + "): nothing is fitted or set on suspicion. To ask no more";
    }
    return advice.findingOut()
        ? "it resolves most for its cost of which repair is needed; none is worth trying"
            + " before more is known. To ask no more"
        : Figures.minutes(Math.max(0, chosen.saves()))
            + " on average, with what is asked after it, against repairing at once, which";
  }

  private Optional<String> runnersUp(Advice advice) {
    String words =
        advice.candidates().stream()
            .skip(1)
            .limit(2)
            .map(
                c ->
                    base.checks().get(c.check()).ask()
                        + (advice.findingOut()
                            ? ""
                            : " (worth " + Figures.minutes(Math.max(0, c.saves())) + ")"))
            .collect(Collectors.joining(" "));
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }

  private String topThree(Belief belief, double[] chances) {
    return IntStream.range(0, chances.length)
        .boxed()
        .sorted((a, b) -> Double.compare(chances[b], chances[a]))
        .limit(3)
        .map(
            c ->
                base.causes().get(belief.model().causes().get(c)).name().toLowerCase(Locale.ROOT)
                    + " "
                    + Figures.percent(chances[c]))
        .collect(Collectors.joining(", ", "", "."));
  }

  private List<Block> whyRepair(Step.Mend mend, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Why this repair"));
    if (mend.plan().isEmpty()) {
      blocks.add(Block.paragraph(Wording.capital(StepWords.occasion(mend.occasion())) + "."));
      return blocks;
    }
    Advice plan = mend.plan().get();
    double[] now = moment.belief().remaining();
    String causes =
        mend.repair().removes().entrySet().stream()
            .map(
                e ->
                    base.causes().get(e.getKey()).name()
                        + ", there with "
                        + Figures.percent(now[moment.belief().model().indexOf(e.getKey())])
                        + " (removed in "
                        + Figures.percent(e.getValue())
                        + " of such cases)")
            .collect(Collectors.joining("; "));
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("Removes", causes));
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

  /** What the machine does, by the answers, as far as a cause has it do that. */
  List<Block> effects(Moment moment, Cause cause) {
    return effects.of(moment.trail(), cause);
  }

  /** What is believed now, and what speaks for and against the leading cause. */
  public List<Block> belief(Moment moment) {
    List<Block> blocks = standing(moment);
    leading(moment, 1).forEach(cause -> blocks.addAll(forAndAgainst(moment, cause)));
    return withEffects(blocks, moment);
  }

  /** What is believed, and for the leading causes the whole account of it. */
  public List<Block> accounts(Moment moment) {
    List<Block> blocks = standing(moment);
    for (Cause cause : leading(moment, 2)) {
      blocks.addAll(account(moment, cause));
      blocks.addAll(effects.of(moment.trail(), cause));
    }
    return blocks;
  }

  private List<Cause> leading(Moment moment, int most) {
    return Interview.ranking(moment, base).stream()
        .limit(most)
        .filter(r -> r.chance() >= 0.05)
        .map(Interview.RankedCause::cause)
        .toList();
  }

  private List<Block> standing(Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("What is believed"));
    blocks.add(steps.bars(moment, CAUSES));
    blocks.add(
        Block.paragraph(
            Text.dim(
                "Chance that the cause was there when the gate was reported; several can be there "
                    + "at once. The "
                    + moment.belief().hypotheses()
                    + " most probable sets of causes are weighed; all others had "
                    + Figures.percent(moment.belief().neglected())
                    + " at the outset.")));
    moment.conflict().ifPresent(c -> blocks.add(Block.paragraph(c.words(base))));
    base.addOns().forEach(a -> blocks.add(Block.paragraph(Text.dim("Add-on " + a.words() + "."))));
    return blocks;
  }

  /** The strongest answers on either side, and what could still turn the balance. */
  List<Block> forAndAgainst(Moment moment, Cause cause) {
    int c = moment.belief().model().indexOf(cause.id());
    double now = moment.belief().atCallOut()[c];
    List<Block.Row> rows = new ArrayList<>();
    rows.add(
        Block.row(
            Figures.percent(moment.trail().prior()[c]), "at the outset" + odds(moment, cause)));
    rows.addAll(strongest(moment, c, 1));
    rows.addAll(strongest(moment, c, -1));
    rows.add(Block.row(Figures.percent(now), "now"));
    Prospects.doubt(moment.belief(), candidates(moment.step()), c)
        .ifPresent(
            d ->
                rows.add(
                    Block.row(
                        Figures.percent(d.then()),
                        "if \""
                            + d.check().ask()
                            + "\" shows: "
                            + Wording.meaning(d.check(), d.outcome().id()))));
    return List.of(
        Block.heading(cause.name() + ": how it came to that"),
        new Block.Rows(rows),
        Block.paragraph(
            Text.dim(
                "What speaks most for it (+) and against it (-), each by what was known before; "
                    + "10 dB is ten times the odds.")));
  }

  /** The strongest moves of one sign, the strongest first. */
  private List<Block.Row> strongest(Moment moment, int cause, int sign) {
    return moment.trail().moves().stream()
        .map(m -> Map.entry(sign * Decibans.between(m.before()[cause], m.after()[cause]), m))
        .filter(e -> e.getKey() >= 1)
        .sorted(Map.Entry.<Double, Trail.Move>comparingByKey().reversed())
        .limit(STRONGEST)
        .map(e -> Block.row(Figures.decibans(sign * e.getKey()), told(e.getValue(), "")))
        .toList();
  }

  /** The checks that the plan thinks best. */
  private List<Check> candidates(Step step) {
    return step.advice().map(Advice::candidates).orElse(List.of()).stream()
        .limit(CANDIDATES)
        .map(c -> base.checks().get(c.check()))
        .toList();
  }

  /** How the belief in one cause came about: prior, odds, and each answer's evidence. */
  public List<Block> account(Moment moment, Cause cause) {
    List<Block> blocks = new ArrayList<>();
    int c = moment.belief().model().indexOf(cause.id());
    Trail trail = moment.trail();
    blocks.add(Block.heading(cause.name() + ": how it came to that"));
    List<Block.Row> rows = new ArrayList<>();
    rows.add(
        Block.row(
            Figures.percent(trail.prior()[c]),
            "at the outset: "
                + Figures.percent(cause.prior())
                + " by its card ("
                + cause.source()
                + ")"
                + odds(moment, cause)));
    double small = 0;
    for (Trail.Move move : trail.moves()) {
      double evidence = Decibans.between(move.before()[c], move.after()[c]);
      if (Math.abs(evidence) < 0.5) {
        small += evidence;
      } else {
        rows.add(Block.row(Figures.decibans(evidence), told(move, " (" + move.source() + ")")));
      }
    }
    rows.add(Block.row(Figures.decibans(small), "all else together"));
    double[] now = moment.belief().atCallOut();
    rows.add(Block.row(Figures.percent(now[c]), "now"));
    blocks.add(new Block.Rows(rows));
    blocks.add(
        Block.paragraph(
            Text.dim(
                "10 dB is ten times the odds. What one answer weighs depends on what was known "
                    + "before it, so this is the account in the order of the answers.")));
    return blocks;
  }

  private static String odds(Moment moment, Cause cause) {
    String words =
        moment.judgement().odds().stream()
            .filter(o -> o.cause().equals(cause.id()))
            .map(ReasonViews::factor)
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "" : "; " + words;
  }

  private static String factor(Odds odds) {
    return "odds times " + odds.factor() + ": " + odds.reason().words();
  }

  private String told(Trail.Move move, String source) {
    Check check = base.checks().get(move.subject());
    if (check == null) {
      Repair repair = base.repairs().get(move.subject());
      return (repair == null ? "Retest" : repair.name()) + ": " + move.words();
    }
    if (check.kind() == Check.Kind.COMPLAINT) {
      String said = move.words().equals(Check.SAID) ? "said: " : "not said: ";
      return said + check.ask() + source;
    }
    return check.ask() + " " + Wording.meaning(check, move.words()) + source;
  }
}
