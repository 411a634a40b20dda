package yett.command.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.console.Text;
import yett.replay.Replayed;
import yett.replay.Replayed.Taken;
import yett.wording.Figures;

/** Shows the steps of a replayed case: what was asked, answered and believed, and the minutes. */
public final class ReplaySteps {
  private static final int FIRST = 3;

  /** Kinds of steps that are named, because the id alone does not say what was done. */
  private static final Set<String> DEEDS = Set.of("enter", "leave", "repair");

  private ReplaySteps() {}

  public static List<Block> blocks(Replayed replayed) {
    List<Block.Item> items = new ArrayList<>();
    double minutes = 0;
    String before = "";
    for (Taken step : replayed.steps()) {
      minutes += step.minutes();
      String first = first(step.belief());
      String then = first.equals(before) ? "" : "; " + first;
      items.add(
          new Block.Item(
              Integer.toString(step.step()),
              Text.of(words(step)),
              Optional.of(Text.of("after " + Figures.minutes(minutes) + then))));
      before = first;
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(replayed.name() + " (" + replayed.file() + ")"));
    if (!replayed.story().isBlank()) {
      blocks.add(Block.paragraph(replayed.story()));
    }
    blocks.add(new Block.Numbered(items));
    blocks.add(Block.paragraph("Ended: " + replayed.because() + "."));
    return blocks;
  }

  private static String words(Taken step) {
    String name = DEEDS.contains(step.kind()) ? step.kind() + " " + step.id() : step.id();
    String taken =
        step.meaning()
            .map(Replayed.Meaning::outcome)
            .filter(o -> !o.equals(step.answer()))
            .map(o -> ", understood as " + o)
            .orElse("");
    return name + ": " + step.answer() + taken + (step.assumed() ? " (left open by the file)" : "");
  }

  private static String first(Map<String, Double> belief) {
    return belief.entrySet().stream()
        .limit(FIRST)
        .map(e -> e.getKey() + " " + Figures.percent(e.getValue()))
        .collect(Collectors.joining(", "));
  }
}
