package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Belief;
import yett.console.Block;
import yett.console.Text;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/**
 * Explains why a check is asked: what it separates, what it costs, what it is worth, and what each
 * answer would mean.
 */
record WhyCheck(RuleBase base) {
  List<Block> of(Step.Ask ask, Moment moment) {
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
    List<Prospects.Prospect> prospects = Prospects.of(moment.belief(), check, ask.expectation());
    Advice advice = ask.advice().get();
    Advice.Candidate chosen = advice.candidates().get(0);
    List<Block.Row> rows = new ArrayList<>();
    rows.add(separates(moment.belief(), prospects));
    rows.add(
        Block.row(
            "Costs",
            Figures.minutes(chosen.minutes()) + ", including changes of set-up and hazards"));
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
        .ifPresent(
            words -> rows.add(Block.row(askedFor ? "The plan's choice" : "Next best", words)));
    blocks.add(new Block.Rows(rows));
    blocks.addAll(then(check, prospects, moment.belief()));
    return blocks;
  }

  /** What a check that a set-up is entered for can tell. */
  List<Block> ahead(Check check, Moment moment) {
    Belief belief = moment.belief();
    List<Prospects.Prospect> prospects =
        Prospects.of(belief, check, moment.judgement().expectation(check.id()));
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.rows(Block.row("For", check.ask()), separates(belief, prospects)));
    blocks.addAll(then(check, prospects, belief));
    return blocks;
  }

  private Block.Row separates(Belief belief, List<Prospects.Prospect> prospects) {
    String separates =
        Prospects.separates(belief, prospects, 4).stream()
            .map(c -> base.causes().get(belief.model().causes().get(c)))
            .map(Cause::name)
            .collect(Collectors.joining("; "));
    return Block.row("Tells apart", separates.isEmpty() ? "little" : separates);
  }

  /** What each answer would mean. */
  private List<Block> then(Check check, List<Prospects.Prospect> prospects, Belief belief) {
    List<Block> blocks = new ArrayList<>();
    for (Prospects.Prospect prospect : prospects) {
      String range = prospect.range().isEmpty() ? "" : prospect.range() + ": ";
      String text = Wording.meaning(check, prospect.outcome().id());
      blocks.add(
          Block.paragraph(
              Text.strong(range + text)
                  .and(", " + Figures.percent(prospect.chance()) + ". Then ")
                  .and(topThree(belief, prospect.left()))));
    }
    return blocks;
  }

  private String worth(Advice advice, Advice.Candidate chosen) {
    if (advice.confirming()) {
      return "it confirms or clears what the next repair is for ("
          + base.repairs().get(advice.jobs().get(0).repair()).name().toLowerCase(Locale.ROOT)
          + "): nothing is fitted or adjusted on suspicion. Asking no more";
    }
    return advice.findingOut()
        ? "it says most, for its cost, about which repair is needed; none is worth trying"
            + " before more is known. Asking no more"
        : Figures.minutes(Math.max(0, chosen.saves()))
            + " on average, including later checks, against repairing at once, which";
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
}
