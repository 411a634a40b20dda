package yett.command.knowledge;

import java.util.ArrayList;
import java.util.List;
import yett.console.Block;
import yett.trial.Comparison;
import yett.trial.Difference;
import yett.trial.Tested;
import yett.wording.Wording;

/** Shows what a change to the cards does to cases. */
final class TrialViews {
  private TrialViews() {}

  static List<Block> tested(Tested test) {
    List<Block> blocks = new ArrayList<>();
    test.changed().forEach(d -> blocks.addAll(Differences.blocks(d)));
    List<Block.Row> rows = new ArrayList<>();
    rows.add(Block.row("Cases", test.score().words()));
    if (test.accepted()) {
      rows.add(Block.row("Changed", test.changed().size() + " against the accepted run"));
      row(rows, "New", test.fresh());
      row(rows, "Gone", test.gone());
    } else {
      rows.add(
          Block.row(
              "Accepted",
              "no run yet, so there is nothing to compare this one with: cases are judged only"
                  + " by what their files say. Use --accept before you change a card, and every later"
                  + " run shows what changed"));
    }
    row(rows, "Not as their file says", test.wrong());
    row(
        rows,
        "Proves little: nothing was looked at before it was found or repaired",
        test.unseen());
    row(rows, "UNSAFE", test.unsafe());
    blocks.add(Block.blank());
    blocks.add(new Block.Rows(rows));
    return blocks;
  }

  private static void row(List<Block.Row> rows, String name, List<String> words) {
    if (!words.isEmpty()) {
      rows.add(Block.row(name, String.join(", ", words)));
    }
  }

  /**
   * @param costs the new cards because of which cases went wrong
   */
  static List<Block> compared(
      Comparison comparison, List<String> costs, boolean sumsOnly, boolean near) {
    List<Block> blocks = new ArrayList<>();
    long slight = comparison.differences().stream().filter(Difference::slight).count();
    if (!sumsOnly) {
      comparison.differences().stream()
          .filter(d -> near || !d.slight())
          .forEach(d -> blocks.addAll(Differences.blocks(d)));
    }
    blocks.add(Block.heading("All cases of both"));
    List<Block.Row> rows = new ArrayList<>();
    comparison
        .notReplayed()
        .ifPresent(
            words -> rows.add(Block.row("Not replayed", words + ". --all replays them too")));
    if (comparison.first().cases() == 0) {
      rows.add(Block.row("Compared", "no case: none that was asked for runs with both"));
    } else {
      rows.add(Block.row("First", comparison.first().words()));
      rows.add(Block.row("Second", comparison.second().words()));
      comparison.sums().forEach(s -> rows.add(row(s)));
      rows.add(
          Block.row(
              "Only a chance moved, by less than 5 points",
              slight + " cases" + (slight > 0 && !near ? "; --near shows them" : "")));
    }
    comparison.cards().forEach(c -> rows.add(row(c)));
    row(rows, "RIGHT BEFORE, WRONG NOW", comparison.wrong());
    costs.forEach(c -> rows.add(row(c)));
    blocks.add(new Block.Rows(rows));
    if (!comparison.alone().isEmpty()) {
      blocks.add(Block.paragraph("Not compared: " + String.join(", ", comparison.alone()) + "."));
    }
    return blocks;
  }

  /** Puts "what: how much" into two columns. */
  private static Block.Row row(String words) {
    String[] parts = words.split(": ", 2);
    return Block.row(Wording.capital(parts[0]), parts[1]);
  }
}
