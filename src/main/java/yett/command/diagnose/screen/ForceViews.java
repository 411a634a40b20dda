package yett.command.diagnose.screen;

import java.util.ArrayList;
import java.util.List;
import yett.console.Block;
import yett.interview.moment.Moment;
import yett.interview.state.Forces;
import yett.knowledge.Check;
import yett.wording.ForceWords;

/** Shows the forces measured in a proof, and how to enter more. */
public final class ForceViews {
  /** How a force is typed. */
  public static final String FORM =
      "force GAP HEIGHT FORCE TIME, such as: force 50 low 380 N 420 ms; or with the meter's file:"
          + " force 50 low curve.csv. Gaps: 50, 300, 500 (mm). Heights: low, middle, top.";

  private ForceViews() {}

  /** Lines with what was measured so far, and how to enter more; empty for other checks. */
  public static List<Block.Row> rows(Check check, Moment moment) {
    List<Block.Row> rows = new ArrayList<>();
    if (Forces.PROOFS.contains(check.id())) {
      Forces forces = Forces.of(moment.entries());
      forces.points(check.id()).forEach(p -> rows.add(Block.row("Force", ForceWords.line(p))));
      forces
          .owed(check.id())
          .forEach(p -> rows.add(Block.row("Measure again", ForceWords.line(p))));
      rows.add(Block.row("With a meter", FORM + " Measure each point three times."));
    }
    return rows;
  }
}
