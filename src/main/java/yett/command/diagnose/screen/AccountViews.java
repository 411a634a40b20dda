package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yett.belief.Decibans;
import yett.console.Block;
import yett.console.Text;
import yett.interview.evidence.Prospects;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.wording.EvidenceWords;
import yett.wording.Figures;
import yett.wording.Wording;

/** Explains the belief in one cause, answer by answer. */
record AccountViews(RuleBase base) {
  private static final int STRONGEST = 3;
  private static final int CANDIDATES = 5;

  /**
   * The strongest answers for and against the cause, and the checks that could still change the
   * picture.
   */
  List<Block> forAndAgainst(Moment moment, Cause cause) {
    int c = moment.belief().model().indexOf(cause.id());
    double now = moment.belief().atCallOut()[c];
    EvidenceWords evidence = EvidenceWords.at(moment);
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
        Block.heading(cause.name() + ": where this figure comes from"),
        new Block.Rows(rows),
        Block.paragraph(
            Text.dim(
                evidence == EvidenceWords.WORDS
                    ? "The strongest evidence for and against it, each weighed by what was known"
                        + " before."
                    : "The strongest evidence for it (+) and against it (-), each weighed by what was"
                        + " known before; 10 dB is ten times the odds.")));
  }

  /** The strongest moves with this sign, the strongest first. */
  private List<Block.Row> strongest(Moment moment, int cause, int sign) {
    return moment.trail().moves().stream()
        .map(m -> Map.entry(sign * Decibans.between(m.before()[cause], m.after()[cause]), m))
        .filter(e -> e.getKey() >= 1)
        .sorted(Map.Entry.<Double, Trail.Move>comparingByKey().reversed())
        .limit(STRONGEST)
        .map(e -> Block.row(EvidenceWords.at(moment).of(sign * e.getKey()), told(e.getValue(), "")))
        .toList();
  }

  /** The checks that the plan ranks best. */
  private List<Check> candidates(Step step) {
    return step.advice().map(Advice::candidates).orElse(List.of()).stream()
        .limit(CANDIDATES)
        .map(c -> base.checks().get(c.check()))
        .toList();
  }

  /** The full account of the belief in one cause: prior, odds, and the evidence of each answer. */
  List<Block> whole(Moment moment, Cause cause) {
    List<Block> blocks = new ArrayList<>();
    int c = moment.belief().model().indexOf(cause.id());
    Trail trail = moment.trail();
    blocks.add(Block.heading(cause.name() + ": where this figure comes from"));
    EvidenceWords words = EvidenceWords.at(moment);
    List<Block.Row> rows = new ArrayList<>();
    rows.add(
        Block.row(
            Figures.percent(trail.prior()[c]),
            "at the outset: "
                + Figures.percent(cause.prior())
                + " from its card ("
                + cause.source()
                + ")"
                + odds(moment, cause)));
    double small = 0;
    for (Trail.Move move : trail.moves()) {
      double evidence = Decibans.between(move.before()[c], move.after()[c]);
      if (Math.abs(evidence) < 0.5) {
        small += evidence;
      } else {
        rows.add(Block.row(words.of(evidence), told(move, " (" + move.source() + ")")));
      }
    }
    rows.add(Block.row(words.of(small), "all else together"));
    double[] now = moment.belief().atCallOut();
    rows.add(Block.row(Figures.percent(now[c]), "now"));
    blocks.add(new Block.Rows(rows));
    blocks.add(
        Block.paragraph(
            Text.dim(
                (words == EvidenceWords.FIGURES ? "10 dB is ten times the odds. " : "")
                    + "How much an answer counts depends on what was known before it, so the"
                    + " account follows the order of the answers.")));
    return blocks;
  }

  private static String odds(Moment moment, Cause cause) {
    String words =
        moment.judgement().odds().stream()
            .filter(o -> o.cause().equals(cause.id()))
            .map(o -> EvidenceWords.at(moment).odds(o.factor()) + ": " + o.reason().words())
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "" : "; " + words;
  }

  private String told(Trail.Move move, String source) {
    Check check = base.checks().get(move.subject());
    if (check == null) {
      Repair repair = base.repairs().get(move.subject());
      return (repair == null ? "Retest" : repair.name()) + ": " + move.words();
    }
    if (check.kind() == Check.Kind.COMPLAINT) {
      String said = move.words().equals(Check.SAID) ? "reported: " : "not among the complaints: ";
      return said + check.ask() + source;
    }
    return check.ask() + " " + Wording.meaning(check, move.words(), move.also()) + source;
  }
}
