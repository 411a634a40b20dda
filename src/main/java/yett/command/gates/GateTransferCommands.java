package yett.command.gates;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.Completions;
import yett.command.common.NewFile;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.console.Progress;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.desk.PastVisit;
import yett.desk.PastVisits;

/** Commands that export and import gates and their readings as sheets for a spreadsheet. */
public record GateTransferCommands(Desk desk, Console console, StandardStreams output) {
  private static final String EXPORT =
      "Usage: gates export FILE.csv. Writes one line per gate and one column per"
          + " question; gates import reads it back.";

  private static final String IMPORT =
      "Usage: gates import FILE.csv. The first line names the columns: Gate, and"
          + " questions about a gate by their names or ids (gates export writes all of them)."
          + " An empty cell changes nothing. If anything is wrong, nothing is imported."
          + " Importing twice doubles nothing.";

  private static final String READINGS_OUT =
      "Usage: gates readings export FILE.csv. Writes one line per reading, for all"
          + " gates and visits.";

  private static final String READINGS_IN =
      "Usage: gates readings import FILE.csv. Columns: Gate, Date (2024-03-02), Visit"
          + " (commissioning or service, if the paper says that the gate passed on that day),"
          + " Measured (such as Chain sag), Reading (82 mm). Baselines and trends begin with"
          + " them. If anything is wrong, nothing is imported. Importing twice doubles"
          + " nothing.";

  @Command(
      name = {"gates", "export"},
      description = "write the gates into a sheet (CSV)",
      help = EXPORT,
      completionProvider = Completions.FILES)
  public void export(@Arguments List<String> words) {
    Path file = NewFile.named(one(words, EXPORT));
    NewFile.write(file, GateSheet.toCarry(desk.base()).csv(new Gates(desk, console).all()), output);
  }

  @Command(
      name = {"gates", "import"},
      description = "take in gates from a sheet (CSV)",
      help = IMPORT,
      completionProvider = Completions.FILES)
  public void take(@Arguments List<String> words) {
    SheetFile sheet = SheetFile.read(one(words, IMPORT));
    List<String> known = new Gates(desk, console).names();
    GateImport reader = new GateImport(desk.base(), sheet, known);
    Map<String, Map<String, String>> gates = reader.gates();
    GateMemory memory = new GateMemory(desk.casebook(), desk.clock());
    int changed = 0;
    int fresh = 0;
    for (Map.Entry<String, Map<String, String>> gate : gates.entrySet()) {
      Optional<Map<String, String>> before = desk.casebook().site(gate.getKey()).map(memory::now);
      Map<String, String> answers = reader.with(before, gate.getValue());
      fresh += known.contains(gate.getKey()) ? 0 : 1;
      changed += known.contains(gate.getKey()) && !before.equals(Optional.of(answers)) ? 1 : 0;
      if (!memory.keep(gate.getKey(), answers)) {
        throw new UsageException(
            "The casebook can no longer be reached. Run the same command again when it can:"
                + " nothing is imported twice.");
      }
    }
    console.say(
        gates.size()
            + " in the sheet: "
            + fresh
            + " new, "
            + changed
            + " changed, the rest as it was.");
  }

  @Command(
      name = {"gates", "readings", "export"},
      description = "write all readings into a sheet (CSV)",
      help = READINGS_OUT,
      completionProvider = Completions.FILES)
  public void exportReadings(@Arguments List<String> words) {
    Path file = NewFile.named(one(words, READINGS_OUT));
    NewFile.write(file, new ReadingSheet(desk.base()).csv(new Gates(desk, console).all()), output);
  }

  @Command(
      name = {"gates", "readings", "import"},
      description = "take in readings of past inspections from a sheet (CSV)",
      help = READINGS_IN,
      completionProvider = Completions.FILES)
  public void takeReadings(@Arguments List<String> words) {
    String name = one(words, READINGS_IN);
    SheetFile sheet = SheetFile.read(name);
    List<PastVisit> visits =
        new PastVisitSheet(desk.base())
            .visits(
                sheet,
                new Gates(desk, console).names(),
                LocalDate.ofInstant(desk.clock().instant(), ZoneId.systemDefault()));
    int kept = 0;
    try (Progress progress = console.start("visits", visits.size())) {
      for (PastVisit visit : visits) {
        kept += new PastVisits(desk).keep(visit, Path.of(name).getFileName().toString());
        progress.step();
      }
    }
    console.say(
        visits.size()
            + " visits in the sheet: "
            + kept
            + " readings imported"
            + (kept == 0 ? "; they were here already." : "."));
  }

  private static String one(List<String> words, String usage) {
    UsageException.when(words.size() != 1 || words.get(0).isBlank(), usage);
    return words.get(0);
  }
}
