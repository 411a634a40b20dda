package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.AddOnBeside;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Problem;
import yett.replay.CaseFile;
import yett.replay.FileReplay;
import yett.replay.ReplayJson;
import yett.replay.Replayed;
import yett.replay.Replays;
import yett.replay.Score;
import yett.wording.Figures;

/** {@code replay}: runs recorded cases without a person. */
public record ReplayCommands(Desk desk, Console console, StandardStreams output) {
  private static final String REPLAY =
      "Usage: replay FILE... [--steps] [--json]. A FILE holds cases as docs/replay.md describes; of a"
          + " folder, all files that end in .case.yaml or .case.json. --steps shows every step:"
          + " what was asked and answered, the minutes so far and the first causes then; --json"
          + " the same and more, for programs.";

  @Command(
      name = "replay",
      description = "run recorded cases without a person",
      help = REPLAY,
      completionProvider = Completions.FILES)
  public void replay(
      @Arguments List<String> words,
      @Option(longName = "steps", description = "every step of every case, for people")
          boolean steps,
      @Option(
              longName = "json",
              description = "every step of every case, as JSON Lines on standard output")
          boolean json) {
    UsageException.when(words.isEmpty(), REPLAY);
    List<Path> files = CaseFile.among(words.stream().map(Path::of).toList());
    if (files.isEmpty()) {
      console.say("There is no case file in " + String.join(", ", words) + ".");
      throw new ExitException(Sysexits.NO_INPUT);
    }
    Tally tally = new Tally();
    try (Progress progress = console.start("Replaying", files.size())) {
      Replays.onAllProcessors(desk.trial())
          .run(
              files,
              (count, total) -> progress.step(),
              result -> {
                tally.add(result);
                if (json) {
                  output.json(ReplayJson.lines(result));
                } else if (steps) {
                  result.cases().forEach(c -> console.show(ReplaySteps.blocks(c)));
                }
              });
    }
    if (!json) {
      tally.show();
    }
    tally.problems.forEach(p -> output.tell(p.toString()));
    tally.problems.stream()
        .map(Problem::file)
        .distinct()
        .flatMap(file -> AddOnBeside.advice(Path.of(file), desk.trial().base()).stream())
        .distinct()
        .forEach(output::tell);
    ExitException.unless(tally.problems.isEmpty(), Sysexits.DATA);
  }

  /** Counts results over all cases, for output other than JSON. */
  private final class Tally {
    private final List<Block.Row> rows = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<Replayed> cases = new ArrayList<>();

    void add(FileReplay result) {
      problems.addAll(result.problems());
      for (Replayed replayed : result.cases()) {
        rows.add(row(replayed));
        cases.add(replayed.withoutMoment());
      }
    }

    private Block.Row row(Replayed replayed) {
      String leading =
          replayed.ranking().isEmpty()
              ? ""
              : desk.trial().base().causes().get(replayed.ranking().get(0).cause()).name()
                  + " "
                  + Figures.percent(replayed.ranking().get(0).chance())
                  + "; ";
      return Block.row(
          replayed.name(),
          leading
              + Score.checks(replayed)
              + " checks, "
              + Figures.minutes(replayed.spentMinutes())
              + ", "
              + replayed.ended().replace('-', ' ')
              + Score.right(replayed).map(r -> r ? "" : "; not as expected").orElse("")
              + (replayed.unsafe().isEmpty()
                  ? ""
                  : "; UNSAFE: " + String.join("; ", replayed.unsafe())));
    }

    void show() {
      if (cases.isEmpty()) {
        return;
      }
      console.show(new Block.Rows(rows));
      List<Block.Row> sums = new ArrayList<>();
      sums.add(sum("All", cases));
      if (cases.stream().anyMatch(Replayed::keptAside)) {
        sums.add(sum("To tune by", cases.stream().filter(c -> !c.keptAside()).toList()));
        sums.add(sum("Kept aside", cases.stream().filter(Replayed::keptAside).toList()));
      }
      console.show(Block.blank(), new Block.Rows(sums));
    }

    private static Block.Row sum(String name, List<Replayed> cases) {
      return Block.row(name, Score.of(cases).words());
    }
  }
}
