package yett.command.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.interview.course.Expertise;
import yett.review.Acceptance;
import yett.trial.CasesBeside;
import yett.trial.Comparison;

/** Shows what accepted changes do to the test cases next to the cards. */
record ReviewTrial(Desk desk, Console console) {
  /** Runs the test cases with the cards before and after the change. */
  void show(
      Optional<String> only,
      Expertise before,
      SortedMap<String, String> files,
      Acceptance acceptance) {
    Expertise after = desk.ruleBases().open(acceptance::files);
    List<String> parts =
        only.isPresent()
            ? List.of(only.get())
            : acceptance.changed().stream()
                .map(f -> f.substring(0, f.lastIndexOf('/') + 1))
                .distinct()
                .toList();
    for (String part : parts) {
      CasesBeside first = CasesBeside.of(files, before.base(), part);
      CasesBeside second = CasesBeside.of(acceptance.files(), after.base(), part);
      String where = part.isEmpty() ? "All cases" : "Cases of " + part;
      if (first.cases().isEmpty()) {
        console.say(where + ": there are none to try the change on.");
        continue;
      }
      try (Progress progress = console.start("Replaying", 2 * first.cases().size())) {
        Comparison comparison =
            Comparison.of(
                new Comparison.Side(before, first),
                new Comparison.Side(after, second),
                progress::step);
        List<Block> blocks = new ArrayList<>();
        comparison.differences().forEach(d -> blocks.addAll(Differences.blocks(d)));
        blocks.add(Block.heading(where));
        blocks.add(
            Block.rows(
                Block.row("Before", comparison.first().words()),
                Block.row("After", comparison.second().words())));
        console.show(blocks);
      }
    }
  }
}
