package yett.command.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.SignalWord;
import yett.interview.event.Ending;
import yett.knowledge.RuleBase;
import yett.practice.PracticeScore;
import yett.practice.Slip;
import yett.practice.Workbench;
import yett.wording.Figures;
import yett.wording.Wording;

/** Shows the score of one exercise or of many. */
public final class ScoreViews {
  private final RuleBase base;

  public ScoreViews(RuleBase base) {
    this.base = base;
  }

  public List<Block> blocks(Workbench bench, PracticeScore score, OptionalDouble before) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("How it went"));
    slips(bench.slips(), blocks);
    blocks.add(Block.paragraph(verdict(bench, score)));
    blocks.add(costs(bench, score, before));
    PlansWay.departures(bench.departures(), blocks);
    PlansWay.steps(score, base, blocks);
    return blocks;
  }

  private static void slips(List<Slip> slips, List<Block> blocks) {
    if (slips.isEmpty()) {
      blocks.add(Block.paragraph("No safety errors."));
    }
    Map<String, Long> often = new LinkedHashMap<>();
    for (Slip slip : slips) {
      often.merge(Wording.quoted(slip.what()) + ": " + slip.why(), 1L, Long::sum);
    }
    often.forEach(
        (words, times) ->
            blocks.add(
                Block.signal(
                    SignalWord.WARNING,
                    "Safety error: " + words + (times > 1 ? " (" + times + " times)" : ""))));
  }

  private String verdict(Workbench bench, PracticeScore score) {
    String wrong = "What it was: " + names(bench.exercise().truth()) + ". ";
    if (score.putRight()) {
      boolean sound = bench.moment().state().closed().equals(Optional.of(Ending.NOTHING_FOUND));
      return wrong
          + (sound
              ? "Its users were told so, and the gate was proved."
              : "It was put right and proved.");
    }
    return bench.remaining().isEmpty()
        ? wrong + "It was put right, and not proved."
        : wrong + "Still there at the end: " + names(bench.remaining()) + ".";
  }

  private String names(Set<String> causes) {
    return causes.stream()
        .sorted()
        .map(id -> base.causes().get(id).name())
        .collect(Collectors.joining("; "));
  }

  private Block costs(Workbench bench, PracticeScore r, OptionalDouble before) {
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("You", spent(r.minutes(), r.cost()) + hints(bench.hints())));
    rows.add(
        Block.row(
            "The plan",
            spent(r.planMinutes(), r.planCost())
                + ", on this very gate, knowing what you knew and no more"));
    rows.add(
        Block.row(
            "On average",
            "cost "
                + PracticeViews.money(r.expected() * base.planning().minute())
                + ", hazards and handing over included: what the plan expected at the start, over"
                + " all faults that are reported this way"));
    String average =
        before.isPresent()
            ? "; " + times(before.getAsDouble()) + " on average in your exercises before"
            : "";
    rows.add(
        Block.row(
            "Minutes",
            r.putRight()
                ? times(r.minutes() / Math.max(1, r.planMinutes())) + " the plan's" + average
                : "not compared: the gate still waits for somebody. Handing over counts as "
                    + Figures.minutes(base.planning().handOver())
                    + ", and its repair on top"));
    return new Block.Rows(rows);
  }

  private static String spent(double minutes, double cost) {
    return Figures.minutes(minutes) + ", cost " + PracticeViews.money(cost);
  }

  private static String hints(int hints) {
    return hints == 0 ? "" : hints == 1 ? ", 1 hint" : ", " + hints + " hints";
  }

  public static String times(double ratio) {
    return String.format(Locale.ROOT, "%.1f times", ratio);
  }
}
