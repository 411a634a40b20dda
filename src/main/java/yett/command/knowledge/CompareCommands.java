package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.NewFile;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.trial.CasesBeside;
import yett.trial.ChangePage;
import yett.trial.Comparison;
import yett.trial.Comparison.Side;
import yett.trial.Culprits;
import yett.trial.KeptRuns;
import yett.trial.ReleaseNotes;

/** {@code knowledge compare}: shows what a change to the cards does to cases. */
public record CompareCommands(Desk desk, Console console, StandardStreams output) {
  private static final String COMPARE =
      "Usage: knowledge compare [FIRST] SECOND [--only PART] [--sums] [--near] [--html"
          + " FILE] [--notes FILE]. Runs the test cases of both folders under each of the two"
          + " rule bases and shows, case by case, where the results differ: the question"
          + " asked, the first cause, the belief, the repairs, the minutes; then the sums."
          + " Without FIRST, SECOND is compared with the rule base in use. An add-on means"
          + " the rule base in use with the add-on laid over it. Cases with the same"
          + " questions, conclusions and work, in which no chance moved by 5 points, are only"
          + " counted; --near shows them as well. Cases that went from right to wrong are"
          + " always listed, with the new card without which they are right. A case is not"
          + " replayed if nothing that changed can occur at its gate. A quick look also skips"
          + " cases whose answers, given one after the other, move no chance by 3 points"
          + " while no cause with a changed card reaches 5 %. Results of earlier comparisons"
          + " are reused. The cases that the change moves most are replayed first; after a"
          + " minute it is told what they show and how many are open, and the rest goes on."
          + " --all replays every case. --html writes a page to print: what the"
          + " change adds, which cases it breaks, mends and moves, and why. --notes writes"
          + " what is new, for users of the next version (docs/add-ons.md).";

  @Command(
      name = {"knowledge", "compare"},
      description = "compare two rule bases by what they ask and conclude",
      help = COMPARE,
      completionProvider = Completions.FILES)
  public void compare(
      @Arguments List<String> words,
      @Option(longName = "only", description = TestCommands.ONLY) String only,
      @Option(longName = "sums", description = "the sums only") boolean sums,
      @Option(
              longName = "near",
              description = "also cases in which chances moved a little and nothing else")
          boolean near,
      @Option(
              longName = "all",
              description = "replay every case anew, also those that a quick look passes over")
          boolean all,
      @Option(longName = "html", description = "write it as a page to print to this new file")
          String html,
      @Option(longName = "notes", description = "write what is new to this new file, in Markdown")
          String notes) {
    UsageException.when(words.isEmpty() || words.size() > 2, COMPARE);
    Optional<Path> page = Optional.ofNullable(html).map(NewFile::named);
    Optional<Path> news = Optional.ofNullable(notes).map(NewFile::named);
    String part = Objects.requireNonNullElse(only, "");
    KnowledgeSource last = desk.choice().source(Path.of(words.get(words.size() - 1)));
    Side first =
        side(
            words.size() == 2
                ? desk.choice().source(Path.of(words.get(0)))
                : desk.choice().source(),
            part);
    Side second = side(last, part);
    Comparison comparison = compare(first, second, all);
    List<String> costs = culprits(comparison, first, second);
    console.show(TrialViews.compared(comparison, costs, sums, near));
    SameVersion.remark(first.expertise().base(), second.expertise().base()).ifPresent(console::say);
    page.ifPresent(
        file ->
            NewFile.write(
                file,
                ChangePage.of(
                    comparison,
                    costs,
                    first.expertise().base(),
                    second.expertise().base(),
                    title(words, part),
                    desk.firm().letterhead().paper()),
                output));
    news.ifPresent(
        file ->
            NewFile.write(
                file,
                ReleaseNotes.of(
                    comparison, costs, first.expertise().base(), second.expertise().base()),
                output));
    ExitException.unless(
        first.cases().problems().isEmpty() && second.cases().problems().isEmpty(), Sysexits.DATA);
  }

  private static String title(List<String> words, String part) {
    return words.get(words.size() - 1)
        + " compared with "
        + (words.size() == 2 ? words.get(0) : "the rule base in use")
        + (part.isEmpty() ? "" : ", only the cases of " + part)
        + ".";
  }

  private Side side(KnowledgeSource source, String only) {
    Expertise expertise = desk.tried(source);
    CasesBeside cases = CasesBeside.of(source.files(), expertise.base(), only);
    cases.problems().forEach(p -> output.tell(p.toString()));
    return new Side(expertise, cases.byAddOn(expertise.base()));
  }

  /** The new cards because of which cases went wrong. */
  private List<String> culprits(Comparison comparison, Side first, Side second) {
    int wrong = comparison.wrong().size();
    if (wrong == 0) {
      return List.of();
    }
    try (Progress progress = console.start("Looking for the card behind it", wrong)) {
      return Culprits.of(
          comparison,
          first.expertise().base(),
          second.expertise().base(),
          second.cases(),
          desk.ruleBases()::open,
          progress::step);
    }
  }

  private Comparison compare(Side first, Side second, boolean all) {
    int runs = first.cases().cases().size() + second.cases().cases().size();
    try (FirstResult course = new FirstResult(console, output, runs, !all)) {
      return all
          ? Comparison.of(first, second, course)
          : Comparison.ofTouched(first, second, KeptRuns.in(desk.ruleBases().keptRuns()), course);
    }
  }
}
