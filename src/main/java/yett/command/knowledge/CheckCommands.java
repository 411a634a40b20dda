package yett.command.knowledge;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.bench.Checked;
import yett.bench.Checker;
import yett.bench.NewChoices;
import yett.bench.RuleExamples;
import yett.bench.WatchedFolder;
import yett.bench.WorkFolder;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.ProblemText;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;

/** {@code knowledge check}: reads a rule base and reports everything that is wrong with it. */
public record CheckCommands(Desk desk, Console console, StandardStreams output) {
  private static final String CHECK =
      "Usage: knowledge check [FOLDER] [--watch]. Without a folder, the rule base in use; an"
          + " add-on is checked as laid over it. Cards and cases are read; rules (DRL) are not"
          + " run: their names and syntax are checked and, once they are trusted, they are"
          + " compiled. A repair without a proof is remarked on."
          + " The exit status is 0 if nothing is wrong, 65 otherwise.";

  @Command(
      name = {"knowledge", "check"},
      description = "find what is wrong with the cards of a rule base",
      help = CHECK,
      completionProvider = Completions.FILES)
  public void check(
      @Arguments List<String> words,
      @Option(
              longName = "watch",
              description =
                  "look again whenever a file of the folder is saved, until Ctrl-C or Ctrl-D")
          boolean watch) {
    Path folder = Path.of(String.join(" ", words));
    if (watch) {
      if (words.isEmpty()) {
        throw new UsageException("Say which folder to watch. " + CHECK);
      }
      ExitException.unless(watch(folder), Sysexits.DATA);
      return;
    }
    KnowledgeSource source =
        words.isEmpty() ? desk.choice().source() : desk.choice().source(folder);
    SortedMap<String, String> files = source.files();
    ExitException.unless(
        tell(new Checker(desk.ruleBases()::ruleProblems).check(files), files), Sysexits.DATA);
  }

  private boolean watch(Path folder) {
    Checker checker = new Checker(desk.ruleBases()::ruleProblems);
    SortedMap<String, String> all = desk.choice().source(folder).files();
    try (WatchedFolder watched = new WatchedFolder(folder)) {
      endWithInput(watched);
      WorkFolder laid = WorkFolder.of(folder, all, watched.files());
      boolean well = tell(checker.check(all), all);
      while (true) {
        output.print("Watching " + folder + ". Ctrl-C ends it.");
        List<String> changed = watched.await();
        if (changed.isEmpty()) {
          return well;
        }
        output.print("\nSaved: " + String.join(", ", changed));
        SortedMap<String, String> files = laid.with(watched.files());
        List<Problem> refused = watched.refused().stream().map(laid::placed).toList();
        well = tell(checker.check(files).with(refused), files);
      }
    }
  }

  /**
   * Stops watching when the input ends. Nobody types here; the end of the input means that nobody
   * is watching any more.
   */
  private static void endWithInput(WatchedFolder watched) {
    Thread reader =
        new Thread(
            () -> {
              try {
                while (System.in.read() >= 0) {
                  // Typed text has no meaning here.
                }
              } catch (IOException e) {
                // Counts as the end of the input.
              }
              watched.close();
            },
            "end of input");
    reader.setDaemon(true);
    reader.start();
  }

  /** Reports the problems; returns whether there are none. */
  private boolean tell(Checked checked, SortedMap<String, String> files) {
    checked.problems().forEach(p -> output.print(ProblemText.of(p, files)));
    if (!checked.problems().isEmpty()) {
      long broken = checked.problems().stream().map(p -> p.file()).distinct().count();
      output.print(
          counted(checked.problems().size(), "problem")
              + " in "
              + counted(broken, "file")
              + ". Ids are looked up with: knowledge find WORD.");
      return false;
    }
    RuleBase base = checked.base();
    console.say(
        "No problem found: "
            + base.causes().size()
            + " causes, "
            + base.ordinaryChecks().count()
            + " checks, "
            + base.repairs().size()
            + " repairs, "
            + checked.cases()
            + " cases.");
    List<String> untrusted = desk.ruleBases().untrusted(base);
    if (!untrusted.isEmpty()) {
      console.say(
          "Not compiled, because nobody has trusted them yet: "
              + String.join(", ", untrusted)
              + ". After knowledge trust FOLDER the compiler looks at them too.");
    } else if (base.addOns().stream().anyMatch(a -> a.adds().toString().contains("rules of "))) {
      RuleExamples.remarks(desk.ruleBases().open(base), files).forEach(output::print);
    }
    NewChoices.remarks(ShippedKnowledge.ruleBase(), base).forEach(r -> console.say(r));
    checked.remarks().forEach(r -> console.say(r));
    base.addOns().forEach(a -> console.say("Add-on " + a.words() + "."));
    return true;
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
