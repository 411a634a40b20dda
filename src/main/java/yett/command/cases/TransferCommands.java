package yett.command.cases;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CarryFile;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;

/** {@code cases export} and {@code cases import}: carry cases to another casebook in a file. */
public record TransferCommands(Desk desk, Console console) {
  private static final String EXPORT =
      "Usage: cases export CASE... --to FILE, or --all or --open instead of the cases."
          + " The other casebook imports the file with: cases import FILE. Names and"
          + " telephone numbers stay here, unless you add --people.";

  private static final String IMPORT =
      "Usage: cases import FILE [--apart]. Importing a file again changes nothing. A"
          + " case that was continued both here and elsewhere is shown and stays as it is"
          + " here; with --apart, the other version becomes a case of its own.";

  @Command(
      name = {"cases", "export"},
      description = "write cases to a file, to be carried to another casebook",
      help = EXPORT,
      completionProvider = Completions.CASES)
  public void export(
      @Arguments List<String> words,
      @Option(longName = "all", description = "every case") boolean all,
      @Option(longName = "open", description = "every case that is not closed") boolean open,
      @Option(
              longName = "people",
              description = "with the names and telephone numbers that are kept with the cases")
          boolean people,
      @Option(longName = "to", description = "the file to write; it must not exist yet")
          String to) {
    UsageException.when(words.isEmpty() != (all || open) || to == null, EXPORT);
    Path file = Path.of(to);
    if (Files.exists(file)) {
      throw new UsageException(file + " exists already. Name another file, or move it away.");
    }
    Casebook casebook = desk.casebook();
    List<CaseSummary> cases =
        all
            ? casebook.cases()
            : open ? casebook.cases(CaseStatus.OPEN) : summaries(casebook, words);
    CarryFile.writeTo(file, writer -> write(writer, cases, people));
    console.say(
        file
            + " holds "
            + (cases.size() == 1 ? "1 case" : cases.size() + " cases")
            + (people ? ", with what is known of people." : ", without what is known of people."));
  }

  @Command(
      name = {"cases", "import"},
      description = "import cases from a file that another casebook wrote",
      help = IMPORT,
      completionProvider = Completions.FILES)
  public void importCases(
      @Arguments List<String> words,
      @Option(
              longName = "apart",
              description = "a case continued differently elsewhere becomes a case of its own")
          boolean apart) {
    UsageException.when(words.isEmpty(), IMPORT);
    boolean whole = new CaseImport(desk, console, apart).read(Path.of(String.join(" ", words)));
    ExitException.unless(whole, Sysexits.DATA);
  }

  private static List<CaseSummary> summaries(Casebook casebook, List<String> words) {
    List<CaseId> ids = words.stream().map(casebook::find).distinct().toList();
    return ids.stream().map(casebook::summary).toList();
  }

  private void write(Writer to, List<CaseSummary> cases, boolean people) throws IOException {
    Casebook casebook = desk.casebook();
    var sites =
        cases.stream()
            .map(CaseSummary::siteId)
            .distinct()
            .flatMap(id -> casebook.carry(id).stream())
            .toList();
    CarryFile.writeHead(to, desk.clock().instant(), cases.size(), sites.size());
    for (var site : sites) {
      CarryFile.write(to, site);
    }
    try (Progress progress = console.start("cases", cases.size())) {
      for (CaseSummary line : cases) {
        CarryFile.write(to, casebook.carry(line.id(), people));
        progress.step();
      }
    }
  }
}
