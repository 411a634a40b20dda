package yett.command.practice;

import java.util.List;
import yett.console.Block;

/** The words that an exercise understands. */
final class PracticeHelp {
  private PracticeHelp() {}

  /**
   * @param running the set-up for trying the gate, to put after the word; empty if there is none
   */
  static List<Block> blocks(String running) {
    return List.of(
        Block.heading("Words"),
        Block.rows(
            Block.row("dangers", "look for dangers to people; comes first"),
            Block.row("checks AREA", "the checks of an area with their numbers"),
            Block.row("repairs AREA", "the repairs of an area: r and a number"),
            Block.row("set-ups", "states of the work; s and a number enters or leaves one"),
            Block.row("try", "see whether the gate runs as it should" + running),
            Block.row("proofs", "what has to pass before the gate returns to service"),
            Block.row("finish", "back into service"),
            Block.row("hand over", "give the gate to the next level"),
            Block.row("gate", "the gate as installed"),
            Block.row("usual", "the usual range of what was measured last"),
            Block.row("so far", "what was found, what is in force"),
            Block.row("hint", "what the plan would do next, and why; it is counted"),
            Block.row("save", "stop here and keep everything")),
        Block.paragraph(
            "Anything else is looked up: chain sag, measure the batteries, tighten the chain."));
  }
}
