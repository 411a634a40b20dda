package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Decibans;
import yett.console.Block;
import yett.console.Text;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.EvidenceWords;
import yett.wording.Figures;
import yett.wording.Wording;

/**
 * Shows what an answer was taken to mean, how far it changed the belief, and what else followed
 * from it.
 */
public final class MovementViews {
  private final RuleBase base;

  public MovementViews(RuleBase base) {
    this.base = base;
  }

  /** What an answer was taken to mean and how far it changed the belief. */
  public List<Block> taken(Moment before, Moment after, Check check) {
    List<Block> blocks = new ArrayList<>();
    List<Trail.Move> moves = after.trail().moves();
    Optional<Trail.Move> move =
        moves.stream().filter(m -> m.subject().equals(check.id())).reduce((a, b) -> b);
    if (move.isEmpty()) {
      return blocks;
    }
    String meaning =
        reading(after, check) + Wording.meaning(check, move.get().words(), move.get().also());
    blocks.add(
        Block.paragraph(
            Text.of("Understood as: ")
                .and(Text.strong(meaning))
                .and(". " + movement(move.get(), after))));
    blocks.addAll(news(before, after));
    return blocks;
  }

  /** Other new conclusions of the rules, and answers that hardly fit together. */
  public List<Block> news(Moment before, Moment after) {
    List<Block> blocks = new ArrayList<>();
    after.judgement().remarks().stream()
        .filter(r -> !before.judgement().remarks().contains(r))
        .forEach(r -> blocks.add(Block.paragraph("Note: " + r.text())));
    after
        .conflict()
        .filter(c -> !before.conflict().equals(after.conflict()))
        .ifPresent(
            c ->
                blocks.add(
                    Block.paragraph(
                        new Wording(base).conflict(c) + " Type correct to change one.")));
    return blocks;
  }

  /** The reading as it was understood, shown before its meaning. */
  private static String reading(Moment moment, Check check) {
    return moment
        .state()
        .latest(check.id())
        .flatMap(a -> a.answer().reading())
        .map(r -> check.measures().orElseThrow().shown(r.typed(), r.value()) + ", ")
        .orElse("");
  }

  /** The causes whose chance changed most, with the evidence. */
  public String movement(Trail.Move move, Moment moment) {
    List<String> ids = moment.belief().model().causes();
    EvidenceWords evidence = EvidenceWords.at(moment);
    String words =
        IntStream.range(0, ids.size())
            .boxed()
            .filter(c -> Math.abs(move.after()[c] - move.before()[c]) >= 0.01)
            .sorted(
                (a, b) ->
                    Double.compare(
                        Math.abs(move.after()[b] - move.before()[b]),
                        Math.abs(move.after()[a] - move.before()[a])))
            .limit(3)
            .map(
                c ->
                    base.causes().get(ids.get(c)).name()
                        + " "
                        + Figures.percent(move.before()[c])
                        + " to "
                        + Figures.percent(move.after()[c])
                        + evidence.behind(Decibans.between(move.before()[c], move.after()[c])))
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "The chances hardly change." : words + ".";
  }
}
