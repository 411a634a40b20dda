package yett.command.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import yett.command.common.SheetText;
import yett.console.Block;
import yett.practice.course.ClassTable;
import yett.practice.course.Course;

/** Shows the results of a class, on a screen and as a table for a spreadsheet. */
final class ClassViews {
  private ClassViews() {}

  static List<Block> table(Course course, ClassTable table, int draws) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(course.title() + " · exercises: " + course.tasks().size()));
    blocks.add(
        new Block.Rows(table.rows().stream().map(r -> Block.row(r.trainee(), words(r))).toList()));
    blocks.add(
        Block.paragraph(
            "Best first: by safety errors, a gate that was not put right counting as one, then gates put right, then faults confirmed before"
                + " they were repaired; time and parts, against the plan's average over "
                + draws
                + " gates alike, only where all that is equal."));
    table.unused().forEach(words -> blocks.add(Block.paragraph("Not counted: " + words)));
    return blocks;
  }

  private static String words(ClassTable.Row row) {
    if (row.done() == 0) {
      return "no result";
    }
    return "errors: "
        + errors(row)
        + ", put right: "
        + row.putRight()
        + " of "
        + row.done()
        + ", confirmed first: "
        + row.confirmed()
        + (row.time().isPresent()
            ? ", time: " + ScoreViews.times(row.time().getAsDouble()) + " the plan's"
            : "")
        + (row.parts().isPresent() ? ", parts: " + parts(row.parts().getAsDouble()) : "")
        + (row.hints() == 0 ? "" : ", hints: " + row.hints());
  }

  /** What comes first in the order: safety errors, and gates that were not put right. */
  private static String errors(ClassTable.Row row) {
    int left = row.done() - row.putRight();
    return row.slips() + left == 0
        ? "none"
        : row.slips() + left + " (safety " + row.slips() + ", not put right " + left + ")";
  }

  private static String parts(double money) {
    long whole = Math.round(money);
    return whole == 0 ? "as the plan" : String.format(Locale.ROOT, "%+d a gate", whole);
  }

  static String csv(ClassTable table) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "trainee",
            "exercises",
            "safety errors",
            "put right",
            "confirmed first",
            "hints",
            "time against plan",
            "parts beyond plan",
            "remark"));
    for (ClassTable.Row row : table.rows()) {
      if (row.done() == 0) {
        lines.add(List.of(SheetText.name(row.trainee()), "0", "", "", "", "", "", "", "no result"));
        continue;
      }
      lines.add(
          List.of(
              SheetText.name(row.trainee()),
              Integer.toString(row.done()),
              Integer.toString(row.slips()),
              Integer.toString(row.putRight()),
              Integer.toString(row.confirmed()),
              Integer.toString(row.hints()),
              figure(row.time()),
              figure(row.parts()),
              ""));
    }
    table
        .unused()
        .forEach(
            words -> lines.add(List.of("", "", "", "", "", "", "", "", "Not counted: " + words)));
    return SheetText.csv(lines);
  }

  private static String figure(OptionalDouble figure) {
    return figure.isPresent() ? String.format(Locale.ROOT, "%.2f", figure.getAsDouble()) : "";
  }
}
