package yett.command.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.function.Predicate;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.NewFile;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.files.BoundedFile;
import yett.files.WholeFile;
import yett.knowledge.AddOn;
import yett.knowledge.Cause;
import yett.knowledge.CauseTable;
import yett.knowledge.CauseTableEdit;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.rules.Sheet;

/**
 * {@code knowledge table}: exports the table of causes and what they show to a spreadsheet, and
 * imports it.
 */
public record TableCommands(Desk desk, Console console, StandardStreams output) {
  private static final String TABLE =
      "Usage: knowledge table FOLDER --out FILE [--area AREA] [--all], or knowledge table"
          + " FOLDER --in FILE [--area AREA]. The first writes what the cards say of causes,"
          + " complaints, looks and effects as a table (XLSX if the name ends so, else CSV in"
          + " UTF-8): one line per cause. Of an add-on these are the causes of which its own"
          + " cards say something; --all writes the others too, to look at. The second reads it back and writes the changed"
          + " cells into the cards of the folder; nothing else changes. If anything is wrong,"
          + " each wrong cell is named and nothing is written.";

  private static final int LARGEST = 4 << 20;

  @Command(
      name = {"knowledge", "table"},
      description = "take causes and what they show to a spreadsheet and back",
      help = TABLE,
      completionProvider = Completions.FILES)
  public void table(
      @Arguments List<String> words,
      @Option(longName = "out", description = "write the table to this new file") String out,
      @Option(longName = "in", description = "read the table from this file") String in,
      @Option(longName = "area", description = "only the causes of this area") String area,
      @Option(
              longName = "all",
              description = "with the causes of which the add-on says nothing, to look at")
          boolean all) {
    UsageException.when(words.size() != 1 || (out == null) == (in == null), TABLE);
    Path folder = Path.of(words.get(0));
    SortedMap<String, String> files = desk.choice().source(folder).files();
    RuleBase base = RuleBase.read(() -> files);
    String part = Objects.requireNonNullElse(area, "");
    if (out != null) {
      Path file = NewFile.named(out);
      CauseTable table = of(base, part, c -> all || isOf(folder, c, base));
      if (table.isEmpty()) {
        throw new UsageException(
            "The cards of "
                + folder
                + (part.isEmpty() ? "" : " in the area " + part)
                + " say nothing of any cause yet, so there is nothing to edit. --all writes the"
                + " causes of the rule base below it, to look at.");
      }
      write(file, table);
      return;
    }
    CauseTable table = of(base, part, c -> true);
    Map<String, Path> mine = OwnCards.of(folder, files.keySet());
    CauseTableEdit edit = CauseTableEdit.of(table, text(Path.of(in)), files, mine::containsKey);
    if (!edit.problems().isEmpty()) {
      edit.problems().forEach(p -> output.tell(in + ": " + p));
      output.tell("Nothing was written.");
      throw new ExitException(Sysexits.DATA);
    }
    if (edit.changed().isEmpty()) {
      console.say("The table says what the cards say; nothing was written.");
      return;
    }
    RuleBase.read(edit::files); // reports what the new figures break before anything is written
    edit.changed().forEach(f -> write(mine.get(f), edit.files().get(f)));
    console.show(Block.numbered(edit.cells()));
    console.say(
        "Written: "
            + String.join(", ", edit.changed())
            + ". Version control shows what changed; knowledge compare what it does.");
  }

  /** Whether the cards of a folder say something of a cause; those of a whole rule base say all. */
  private static boolean isOf(Path folder, Cause cause, RuleBase base) {
    String path = folder.toString().replace('\\', '/') + "/";
    String whole = folder.toAbsolutePath().normalize().toString().replace('\\', '/') + "/";
    return !Files.exists(folder.resolve(AddOn.FILE))
        || base.addOns().stream()
            .filter(a -> a.folder().equals(path) || a.folder().equals(whole))
            .anyMatch(a -> CauseTable.isOf(a, cause, base));
  }

  private static CauseTable of(RuleBase base, String area, Predicate<Cause> which) {
    List<String> areas =
        base.causes().values().stream()
            .map(c -> c.area())
            .filter(a -> !a.isEmpty())
            .distinct()
            .toList();
    if (!area.isEmpty() && !areas.contains(area)) {
      throw new UsageException("There is no area \"" + area + "\". " + Names.advice(area, areas));
    }
    return new CauseTable(base, c -> (area.isEmpty() || c.area().equals(area)) && which.test(c));
  }

  private void write(Path file, CauseTable table) {
    if (isWorkbook(file)) {
      NewFile.write(file, Sheet.workbook("Causes", table.rows()), output);
    } else {
      NewFile.write(file, table.csv(), output);
    }
  }

  private static boolean isWorkbook(Path file) {
    return file.toString().endsWith(".xlsx");
  }

  private static String text(Path file) {
    try {
      return isWorkbook(file)
          ? CauseTable.csv(Sheet.rows(BoundedFile.bytes(file, LARGEST)))
          : BoundedFile.text(file, LARGEST);
    } catch (IOException e) {
      throw new UsageException(
          file + " cannot be read. See that it is there, and saved as CSV in UTF-8 or as XLSX.");
    }
  }

  private static void write(Path file, String text) {
    try {
      WholeFile.replace(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }
}
