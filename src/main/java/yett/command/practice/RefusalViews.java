package yett.command.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import yett.command.diagnose.screen.CautionViews;
import yett.console.Block;
import yett.console.SignalWord;
import yett.knowledge.SetUp;
import yett.practice.Refusal;

/** Tells a trainee why something cannot be done now. */
record RefusalViews() {
  List<Block> refusal(Refusal refusal, List<LabelledCards.Thing> things) {
    List<Block> blocks = new ArrayList<>();
    if (refusal.slip()) {
      blocks.add(Block.signal(SignalWord.WARNING, refusal.why()));
      blocks.addAll(CautionViews.full(refusal.cautions()));
      blocks.add(Block.paragraph("It was not done; it counts as a safety error."));
    } else {
      blocks.add(Block.paragraph(refusal.why()));
    }
    blocks.addAll(first(refusal.leave(), refusal.enter(), things));
    return blocks;
  }

  /** The set-ups to leave and to enter first. */
  List<Block> first(List<SetUp> leave, List<SetUp> enter, List<LabelledCards.Thing> things) {
    List<Block> blocks = new ArrayList<>();
    if (!leave.isEmpty()) {
      blocks.add(Block.paragraph("To leave first: " + names(leave, things) + "."));
    }
    if (!enter.isEmpty()) {
      blocks.add(Block.paragraph("To enter first: " + names(enter, things) + "."));
    }
    return blocks;
  }

  private static String names(List<SetUp> setUps, List<LabelledCards.Thing> things) {
    return setUps.stream()
        .map(
            s ->
                things.stream()
                        .filter(t -> t.card().equals(s))
                        .map(LabelledCards.Thing::label)
                        .findFirst()
                        .orElse("")
                    + " "
                    + s.name())
        .collect(Collectors.joining("; "));
  }
}
