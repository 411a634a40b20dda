package yett.command.diagnose.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.command.common.Words;
import yett.command.diagnose.screen.CautionViews;
import yett.command.diagnose.screen.MovementViews;
import yett.command.diagnose.screen.StillInForce;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.evidence.Prospects;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.interview.moment.Ordinary;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Shows a round of looks, all on one screen of 80 by 24 characters. */
public class RoundViews {
  private static final int CAUSES = 2;

  private final RuleBase base;
  private final CautionViews cautions;
  private final MovementViews movements;

  RoundViews(Sitting sitting) {
    this(sitting.base(), sitting.cautions());
  }

  RoundViews(RuleBase base, CautionViews cautions) {
    this.base = base;
    this.cautions = cautions;
    this.movements = new MovementViews(base);
  }

  List<Block> round(Step.LookRound round, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.heading("Looks: " + round.place().name() + " · " + Figures.minutes(round.minutes())));
    blocks.add(Block.paragraph(Text.dim(why(round.first(), moment))));
    new StillInForce(base).afterDanger(moment).ifPresent(blocks::add);
    blocks.addAll(cautions.written(round.cautions()));
    List<Block.Item> items = new ArrayList<>();
    for (Step.Ask look : round.looks()) {
      Check check = look.check();
      items.add(
          Block.item(
              Integer.toString(items.size() + 1),
              check.ask(),
              isOrdinary(moment, check) ? check.outcomes().get(0).text() : "say which"));
    }
    blocks.add(new Block.Numbered(items));
    blocks.add(
        Block.paragraph(
            Text.dim(
                round.looks().stream().anyMatch(l -> l.check().several())
                    ? "3, 3b, 3bc, 3 words: differs. ?3: cannot tell. -3: unseen. how 3. one: singly."
                    : "3, 3b, 3 words: differs. ?3: cannot tell. -3: not seen. how 3. one: singly.")));
    LookColumns.help(round.looks().stream().map(Step.Ask::check).toList())
        .ifPresent(help -> blocks.add(Block.paragraph(Text.dim(help))));
    return blocks;
  }

  static boolean isOrdinary(Moment moment, Check check) {
    return Ordinary.isTaken(moment, check.id());
  }

  /** The text under the heading: why the round comes up. */
  String why(Step.Ask first, Moment moment) {
    List<Prospects.Prospect> prospects =
        Prospects.of(moment.belief(), first.check(), first.expectation());
    String causes =
        Prospects.separates(moment.belief(), prospects, CAUSES).stream()
            .map(c -> base.causes().get(moment.belief().model().causes().get(c)).name())
            .collect(Collectors.joining("; "));
    String occasion = StepWords.occasion(first.occasion());
    return (occasion.isEmpty() ? "" : Wording.capital(occasion) + ". ")
        + (causes.isEmpty() ? "A usual result narrows the search." : "Can show: " + causes + ".");
  }

  /** How to look: for one look of the round, or for all. */
  List<Block> how(Step.LookRound round, Optional<Integer> which) {
    List<Block.Item> items = new ArrayList<>();
    for (int i = 0; i < round.looks().size(); i++) {
      Check check = round.looks().get(i).check();
      if (which.isEmpty() || which.get() == i) {
        String how = check.how().isEmpty() ? check.ask() : check.how();
        items.add(new Block.Item(Integer.toString(i + 1), Text.of(how), Optional.empty()));
      }
    }
    return List.of(new Block.Numbered(items));
  }

  /** One look that is out of the ordinary, with its outcomes and their letters. */
  List<Block> outcomes(Check check) {
    List<Block.Item> items = new ArrayList<>();
    for (Check.Outcome outcome : check.outcomes()) {
      String letter = Words.letter(items.size());
      items.add(new Block.Item(letter, Text.of(outcome.text()), Optional.empty()));
    }
    Text asked = Text.strong(check.ask());
    return List.of(
        Block.paragraph(check.several() ? asked.and(" (several may be true: bc)") : asked),
        new Block.Numbered(items));
  }

  /** What was understood so far of looks that are not simply ordinary. */
  String soFar(List<Check> looks, Map<Integer, Optional<Answer>> said) {
    return said.entrySet().stream()
        .map(e -> (e.getKey() + 1) + " " + words(looks.get(e.getKey()), e.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String words(Check check, Optional<Answer> answer) {
    return answer
        .map(
            a ->
                a.map(
                    chosen -> Wording.meaning(check, chosen),
                    Answer.Read::typed,
                    () -> Wording.untold(a, "cannot tell"),
                    () -> "not looked at"))
        .orElse("out of the ordinary");
  }

  /** What the answers were taken to mean, and how far they changed the belief together. */
  List<Block> taken(Moment before, Moment after, Step.LookRound round) {
    List<Trail.Move> moves =
        after.trail().moves().stream()
            .filter(m -> m.event() >= before.next())
            .filter(m -> round.looks().stream().anyMatch(l -> l.card().equals(m.subject())))
            .toList();
    List<Block> blocks = new ArrayList<>();
    if (moves.isEmpty()) {
      return blocks;
    }
    String unusual =
        moves.stream()
            .filter(m -> base.checks().get(m.subject()).indexOf(m.words()) != 0)
            .map(m -> Wording.meaning(base.checks().get(m.subject()), m.words(), m.also()))
            .collect(Collectors.joining("; "));
    String usual = moves.size() < round.looks().size() ? "the others as usual" : "all as usual";
    Trail.Move last = moves.get(moves.size() - 1);
    Trail.Move all =
        new Trail.Move(
            last.event(),
            last.subject(),
            last.words(),
            last.reason(),
            last.source(),
            moves.get(0).before(),
            last.after());
    blocks.add(
        Block.paragraph(
            Text.of("Understood as: ")
                .and(Text.strong(unusual.isEmpty() ? usual : unusual))
                .and(". " + movements.movement(all, after))));
    blocks.addAll(movements.news(before, after));
    return blocks;
  }
}
