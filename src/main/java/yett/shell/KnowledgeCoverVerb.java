package yett.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.belief.Lookalikes;
import yett.console.Block;
import yett.console.Progress;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.Coverage;
import yett.replay.Replayed;
import yett.replay.Replays;

/** {@code knowledge cover}: what the cases leave untried, and what no check tells apart. */
final class KnowledgeCoverVerb extends Verb {
  private final Desk desk;

  KnowledgeCoverVerb(Desk desk) {
    super(
        "knowledge cover",
        "tell what no case tries and what no check tells apart",
        "Usage: knowledge cover [FILE...]. Runs the cases of the files (of a folder, all that end in "
            + ".case.yaml or .case.json) and names causes, checks, repairs and proofs that none of "
            + "them reaches; then pairs of causes that no check tells apart well and no one repair "
            + "removes together.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<Path> files = CaseFile.among(words(context).stream().map(Path::of).toList());
    List<Problem> problems = new ArrayList<>();
    if (!files.isEmpty()) {
      show(Coverage.of(desk.expertise().base(), replay(files, problems)));
    }
    lookalikes(desk.expertise().base());
    problems.forEach(System.err::println);
    return problems.isEmpty() ? OK : DATA;
  }

  private List<Replayed> replay(List<Path> files, List<Problem> problems) {
    List<Replayed> cases = new ArrayList<>();
    try (Progress progress = desk.console().start("Replaying", files.size())) {
      Replays.onAllProcessors(desk.expertise())
          .run(
              files,
              (count, total) -> progress.step(),
              result -> {
                result.cases().forEach(c -> cases.add(c.withoutMoment()));
                problems.addAll(result.problems());
              });
    }
    return cases;
  }

  private void show(Coverage coverage) {
    show("Causes that come first in no case", coverage.causes());
    show("Checks that no case is asked", coverage.checks());
    show("Repairs that no case leads to", coverage.repairs());
    show("Proofs that no case is asked", coverage.proofs());
  }

  private void show(String what, List<String> ids) {
    desk.console()
        .show(
            Block.paragraph(
                what + ": " + (ids.isEmpty() ? "none." : String.join(", ", ids) + ".")));
  }

  private void lookalikes(RuleBase base) {
    List<Lookalikes.Pair> pairs = Coverage.lookalikes(base);
    show(
        "Pairs of causes that no check tells apart well and no one repair removes together",
        pairs.stream().map(KnowledgeCoverVerb::words).toList());
  }

  private static String words(Lookalikes.Pair pair) {
    String best =
        pair.check().isEmpty()
            ? "no check at all"
            : String.format(
                Locale.ROOT, "at best %s, %.0f %%", pair.check(), 100 * pair.distance());
    return pair.one() + " and " + pair.other() + " (" + best + ")";
  }
}
