package yett.shell;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;
import yett.console.Progress;
import yett.console.Text;
import yett.knowledge.Problem;
import yett.replay.CaseFile;
import yett.replay.FileReplay;
import yett.replay.ReplayJson;
import yett.replay.Replayed;
import yett.replay.Replays;

/** {@code replay}: recorded cases without a person. */
final class ReplayVerb extends Verb {
  private final Desk desk;

  ReplayVerb(Desk desk) {
    super(
        "replay",
        "run recorded cases without a person",
        "Usage: replay FILE... [--json]. A FILE holds cases as docs/replay.md describes; of a folder, "
            + "all files that end in .case.yaml or .case.json.",
        flag("json", "every step of every case, as JSON Lines on standard output"));
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    List<Path> files = CaseFile.among(words(context).stream().map(Path::of).toList());
    if (files.isEmpty()) {
      desk.console()
          .show(
              Block.paragraph(
                  "There is no case file in " + String.join(", ", words(context)) + "."));
      return NO_INPUT;
    }
    boolean json = has(context, "json");
    Tally tally = new Tally();
    try (Progress progress = desk.console().start("Replaying", files.size())) {
      Replays.onAllProcessors(desk.expertise())
          .run(
              files,
              (count, total) -> progress.step(),
              result -> {
                tally.add(result);
                if (json) {
                  print(result, context.outputWriter());
                }
              });
    }
    if (!json) {
      tally.show();
    }
    tally.problems.forEach(System.err::println);
    return tally.problems.isEmpty() ? OK : DATA;
  }

  private static void print(FileReplay result, PrintWriter out) {
    try {
      ReplayJson.append(result, out);
      out.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write the results", e);
    }
  }

  /** What is told of all cases together when no JSON is wanted. */
  private final class Tally {
    private final List<Block.Row> rows = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private int cases;
    private int judged;
    private int first;
    private double checks;
    private double minutes;

    void add(FileReplay result) {
      problems.addAll(result.problems());
      result.cases().forEach(this::add);
    }

    private void add(Replayed replayed) {
      cases++;
      long asked = replayed.steps().stream().filter(s -> s.kind().equals("check")).count();
      checks += asked;
      minutes += replayed.spentMinutes();
      // Where people are in danger the stop is what has to be right, not the cause.
      Optional<Boolean> right = replayed.judged().stop().or(() -> replayed.judged().cause());
      judged += right.isPresent() ? 1 : 0;
      first += right.orElse(false) ? 1 : 0;
      String leading =
          replayed.ranking().isEmpty()
              ? ""
              : desk.expertise().base().causes().get(replayed.ranking().get(0).cause()).name()
                  + " "
                  + Figures.percent(replayed.ranking().get(0).chance())
                  + "; ";
      rows.add(
          Block.row(
              replayed.name(),
              leading
                  + asked
                  + " checks, "
                  + Figures.minutes(replayed.spentMinutes())
                  + ", "
                  + replayed.ended().replace('-', ' ')
                  + right.map(r -> r ? "" : "; not as expected").orElse("")));
    }

    void show() {
      if (cases == 0) {
        return;
      }
      desk.console().show(new Block.Rows(rows));
      String share =
          judged == 0
              ? ""
              : first + " of " + judged + " as expected (cause first, or the right stop), ";
      desk.console()
          .show(
              Block.blank(),
              Block.paragraph(
                  Text.strong(
                      cases
                          + " cases: "
                          + share
                          + Math.round(10 * checks / cases) / 10.0
                          + " checks and "
                          + Figures.minutes(minutes / cases)
                          + " on average.")));
    }
  }
}
