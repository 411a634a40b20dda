package yett.command.practice;

import java.util.List;
import yett.console.Block;
import yett.practice.TraineeProgress;

/** Shows a trainee's progress over many exercises. */
final class ProgressViews {
  private ProgressViews() {}

  static List<Block> of(TraineeProgress progress) {
    if (progress.results().isEmpty()) {
      return List.of(Block.paragraph("Nothing was practised yet. Begin with: practice"));
    }
    List<Block.Row> rows =
        progress.areas().stream()
            .map(
                a ->
                    Block.row(
                        a.name(),
                        a.putRight()
                            + " of "
                            + a.exercises()
                            + " put right, "
                            + (a.ratio().isPresent()
                                ? ScoreViews.times(a.ratio().getAsDouble())
                                    + " the plan's minutes, "
                                : "")
                            + "safety errors: "
                            + (a.slips() == 0 ? "none" : a.slips())
                            + (a.weak() ? "; practise this" : "")))
            .toList();
    return List.of(
        Block.heading("Practice so far · exercises: " + progress.results().size()),
        new Block.Rows(rows),
        Block.paragraph("Of each area the latest five count; the weakest stands first."));
  }
}
