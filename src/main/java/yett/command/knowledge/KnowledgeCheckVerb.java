package yett.command.knowledge;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.bench.Checked;
import yett.bench.Checker;
import yett.bench.Laid;
import yett.bench.WatchedFolder;
import yett.command.common.ProblemText;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/** {@code knowledge check}: reads a rule base and tells everything that is wrong with it. */
public final class KnowledgeCheckVerb extends Verb {
  private final Workplace place;

  public KnowledgeCheckVerb(Workplace place) {
    super(
        "knowledge check",
        "find what is wrong with the cards of a rule base",
        "Usage: knowledge check [FOLDER] [--watch]. Without a folder, the rule base in use; an"
            + " add-on is looked at as it lies over that. Cards and cases are read; rules (DRL) are"
            + " not run, only the names in them are looked at. A repair without a proof is remarked on."
            + " The exit status is 0 if nothing is wrong, 65 otherwise.",
        flag("watch", "look again whenever a file of the folder is saved, until Ctrl-C or Ctrl-D"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    Path folder = Path.of(String.join(" ", words));
    if (has(context, "watch")) {
      if (words.isEmpty()) {
        throw new UsageException("Say which folder to watch. " + getHelp());
      }
      return watch(folder);
    }
    KnowledgeSource source =
        words.isEmpty() ? place.desk().choice().source() : place.desk().choice().source(folder);
    SortedMap<String, String> files = source.files();
    return tell(new Checker().check(files), files);
  }

  private ExitStatus watch(Path folder) {
    Checker checker = new Checker();
    SortedMap<String, String> all = place.desk().choice().source(folder).files();
    try (WatchedFolder watched = new WatchedFolder(folder)) {
      endWithInput(watched);
      Laid laid = Laid.of(folder, all, watched.files());
      ExitStatus status = tell(checker.check(all), all);
      while (true) {
        place.output().print("Watching " + folder + ". Ctrl-C ends it.");
        List<String> changed = watched.await();
        if (changed.isEmpty()) {
          return status;
        }
        place.output().print("\nSaved: " + String.join(", ", changed));
        SortedMap<String, String> files = laid.with(watched.files());
        List<Problem> refused = watched.refused().stream().map(laid::placed).toList();
        status = tell(checker.check(files).with(refused), files);
      }
    }
  }

  /** Nobody types here: the end of the input means that nobody looks any more. */
  private static void endWithInput(WatchedFolder watched) {
    Thread reader =
        new Thread(
            () -> {
              try {
                while (System.in.read() >= 0) {
                  // whatever is typed means nothing
                }
              } catch (IOException e) {
                // as good as the end
              }
              watched.close();
            },
            "end of input");
    reader.setDaemon(true);
    reader.start();
  }

  private ExitStatus tell(Checked checked, SortedMap<String, String> files) {
    checked.problems().forEach(p -> place.output().print(ProblemText.of(p, files)));
    if (!checked.problems().isEmpty()) {
      long broken = checked.problems().stream().map(p -> p.file()).distinct().count();
      place
          .output()
          .print(
              counted(checked.problems().size(), "problem")
                  + " in "
                  + counted(broken, "file")
                  + ". Ids are looked up with: knowledge find WORD.");
      return DATA;
    }
    RuleBase base = checked.base();
    place
        .console()
        .show(
            Block.paragraph(
                "No problem found: "
                    + base.causes().size()
                    + " causes, "
                    + base.ordinaryChecks().count()
                    + " checks, "
                    + base.repairs().size()
                    + " repairs, "
                    + checked.cases()
                    + " cases."));
    checked.remarks().forEach(r -> place.console().show(Block.paragraph(r)));
    base.addOns().forEach(a -> place.console().show(Block.paragraph("Add-on " + a.words() + ".")));
    return OK;
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
