package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.trial.AcceptedRun;
import yett.trial.CasesBeside;
import yett.trial.Tested;

/**
 * {@code knowledge test}: runs cases with the present cards and compares them with the accepted
 * run.
 */
public record TestCommands(Desk desk, Console console, StandardStreams output) {
  static final String ONLY =
      "a part: the beginning of a path such as chain/, or of the name of a case";

  private static final String TEST =
      "Usage: knowledge test FOLDER [--only PART] [--accept]. Runs the cases beside the cards of"
          + " the folder and shows those that differ from the run that was accepted last, and"
          + " why. The accepted run is the file "
          + AcceptedRun.FILE
          + " in the folder; keep it under version control. The exit status is 1 if anything"
          + " differs, or, while nothing was accepted yet, if a case does not come out as its"
          + " file says.";

  @Command(
      name = {"knowledge", "test"},
      description = "run the cases beside the cards and show what changed",
      help = TEST,
      completionProvider = Completions.FILES)
  public void test(
      @Arguments List<String> words,
      @Option(longName = "only", description = ONLY) String only,
      @Option(longName = "accept", description = "accept this run: later runs are compared with it")
          boolean accept) {
    UsageException.when(words.size() != 1, TEST);
    Path folder = Path.of(words.get(0));
    String part = Objects.requireNonNullElse(only, "");
    KnowledgeSource source = desk.choice().source(folder);
    Expertise expertise = desk.tried(source);
    CasesBeside beside = CasesBeside.of(source.files(), expertise.base(), part);
    beside.problems().forEach(p -> output.tell(p.toString()));
    if (beside.cases().isEmpty()) {
      output.tell(
          part.isEmpty()
              ? "There is no case beside these cards. A case is a file such as new.case.yaml."
              : "No case's path or name begins with \"" + part + "\".");
      throw new ExitException(beside.problems().isEmpty() ? Sysexits.NO_INPUT : Sysexits.DATA);
    }
    Tested test = run(expertise, folder, beside, part.isEmpty());
    console.show(TrialViews.tested(test));
    if (!beside.skipped().isEmpty()) {
      console.say(
          "Not run, because they refer to what is switched off: "
              + String.join(", ", beside.skipped())
              + ".");
    }
    if (accept && beside.problems().isEmpty()) {
      test.accept().run();
      console.say("Accepted; kept in " + folder.resolve(AcceptedRun.FILE) + ".");
    }
    if (!beside.problems().isEmpty()) {
      throw new ExitException(Sysexits.DATA);
    }
    boolean good = accept ? test.unsafe().isEmpty() : test.good();
    ExitException.unless(good, Sysexits.DIFFERENT);
  }

  private Tested run(Expertise expertise, Path folder, CasesBeside beside, boolean whole) {
    try (Progress progress = console.start("Replaying", beside.cases().size())) {
      return Tested.run(expertise, folder, beside.cases(), whole, progress::step);
    }
  }
}
