package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.belief.Lookalikes;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.Coverage;
import yett.replay.RecordedCase;
import yett.trial.Delicate;

/** {@code knowledge cover}: what the cases leave untried, and what no check tells apart. */
public final class CoverCommands {
  private static final int MOST = 20;

  private static final String COVER =
      "Usage: knowledge cover [FILE...]. Runs the cases of the files (of a folder, all that end"
          + " in .case.yaml or .case.json) and names causes, checks, repairs and proofs that none"
          + " of them reaches; the numbers on which their conclusions rest most; then pairs of"
          + " causes that no check tells apart well and no one repair removes together.";

  private final Desk desk;
  private final Console console;
  private final StandardStreams output;

  public CoverCommands(Desk desk, Console console, StandardStreams output) {
    this.desk = desk;
    this.console = console;
    this.output = output;
  }

  @Command(
      name = {"knowledge", "cover"},
      description = "tell what no case tries and what no check tells apart",
      help = COVER,
      completionProvider = Completions.FILES)
  public void cover(@Arguments List<String> words) {
    List<Path> files = CaseFile.among(words.stream().map(Path::of).toList());
    RuleBase base = desk.trial().base();
    List<CaseFile> read = files.stream().map(f -> CaseFile.read(f, base)).toList();
    if (!files.isEmpty()) {
      Delicate.Study study = study(read.stream().flatMap(f -> f.cases().stream()).toList());
      show(Coverage.of(base, study.replayed()));
      numbers(study.numbers());
    }
    lookalikes(base);
    List<Problem> problems = read.stream().flatMap(f -> f.problems().stream()).toList();
    problems.forEach(p -> output.tell(p.toString()));
    ExitException.unless(problems.isEmpty(), Sysexits.DATA);
  }

  private Delicate.Study study(List<RecordedCase> cases) {
    try (Progress progress = console.start("Replaying", cases.size())) {
      return Delicate.among(desk.trial(), cases, progress::step);
    }
  }

  private void numbers(List<Delicate> numbers) {
    console.show(Block.blank(), Block.heading("Numbers that deserve care"));
    List<Block.Row> rows =
        numbers.stream().limit(MOST).map(n -> Block.row(name(n), words(n))).toList();
    console.show(
        new Block.Rows(rows),
        Block.paragraph(
            "How far the right cause moves, before the first repair, when the odds of the"
                + " number are off: 0.5 means half a deciban for each deciban. \"Could turn\":"
                + " half or twice these odds would put another cause first."));
  }

  private static String name(Delicate number) {
    String row = number.cause().isEmpty() ? "otherwise" : number.cause();
    return number.check() + ", " + row + ", " + number.outcome();
  }

  private static String words(Delicate number) {
    String cases = number.cases() == 1 ? "1 case" : number.cases() + " cases";
    return String.format(
        Locale.ROOT,
        "%.2f on average over %s, %.2f in %s%s",
        number.sum() / number.cases(),
        cases,
        number.most(),
        number.mostIn().isEmpty() ? "none" : number.mostIn(),
        number.turns().isEmpty() ? "" : "; could turn " + String.join(", ", number.turns()));
  }

  private void show(Coverage coverage) {
    show("Causes that come first in no case", coverage.causes());
    show("Checks that no case is asked", coverage.checks());
    show("Repairs that no case leads to", coverage.repairs());
    show("Proofs that no case is asked", coverage.proofs());
  }

  private void show(String what, List<String> ids) {
    console.show(
        Block.paragraph(what + ": " + (ids.isEmpty() ? "none." : String.join(", ", ids) + ".")));
  }

  private void lookalikes(RuleBase base) {
    List<Lookalikes.Pair> pairs = Coverage.lookalikes(base);
    show(
        "Pairs of causes that no check tells apart well and no one repair removes together",
        pairs.stream().map(CoverCommands::words).toList());
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
