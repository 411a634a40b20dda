package yett.command.knowledge;

import java.util.List;
import yett.console.Block;
import yett.console.Text;
import yett.trial.Difference;

/** Shows how two runs of a case differ. */
public final class Differences {
  private Differences() {}

  public static List<Block> blocks(Difference difference) {
    String turn = difference.turn().words();
    return List.of(
        Block.heading(
            difference.name()
                + " ("
                + difference.file()
                + ")"
                + (turn.isEmpty() ? "" : ": " + turn)),
        new Block.Numbered(
            difference.words().stream()
                .map(w -> new Block.Item("-", Text.of(w), java.util.Optional.empty()))
                .toList()));
  }
}
