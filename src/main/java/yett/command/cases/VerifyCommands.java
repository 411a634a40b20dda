package yett.command.cases;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CarryFile;
import yett.casebook.Casebook;
import yett.casebook.Finding;
import yett.casebook.Finding.Kind;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.diagnose.screen.UnusableEvents;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;

/** {@code cases verify}: checks that everything in the casebook is as it was written. */
public record VerifyCommands(Desk desk, Console console) {
  private static final int SHOWN = 200;

  private static final String VERIFY =
      "Usage: cases verify [--to FILE]. Nothing is changed. Each event is sealed when it is"
          + " written; this reports what another program has changed or removed since, and what"
          + " cannot be read or makes no sense. With --to, the faulty cases are written to a"
          + " file exactly as they are. cases repair fixes what can be fixed.";

  @Command(
      name = {"cases", "verify"},
      description = "see whether everything in the casebook is as it was written",
      help = VERIFY)
  public void verify(
      @Option(longName = "to", description = "the file to write; it must not exist yet")
          String to) {
    Casebook casebook = desk.casebook();
    List<Finding> findings = casebook.verify();
    Set<String> defect =
        findings.stream()
            .filter(Finding::isDefect)
            .map(Finding::caseId)
            .collect(Collectors.toCollection(TreeSet::new));
    List<Block.Row> rows =
        new ArrayList<>(
            findings.stream()
                .filter(f -> f.kind() != Kind.SEALED_LATER)
                .map(f -> row(f.caseId(), f.event(), f.words()))
                .toList());
    rows.addAll(doubts(casebook));
    rows.sort(Comparator.comparing(Block.Row::name));
    if (rows.size() > SHOWN) {
      int more = rows.size() - SHOWN;
      rows = new ArrayList<>(rows.subList(0, SHOWN));
      rows.add(Block.row("", more + " more"));
    }
    if (!rows.isEmpty()) {
      console.show(new Block.Rows(rows));
    }
    console.say(sum(defect.size(), findings));
    write(to, casebook, defect);
    ExitException.unless(defect.isEmpty(), Sysexits.DATA);
  }

  /** Events that can be read but make no sense; the interview skips them. */
  private List<Block.Row> doubts(Casebook casebook) {
    var notTaken = new UnusableEvents(desk.base());
    List<Block.Row> rows = new ArrayList<>();
    casebook.forEach(
        casebook.cases(),
        (line, events) ->
            notTaken
                .of(OpenCase.entries(events))
                .forEach(words -> rows.add(Block.row(line.id().toString(), words))));
    return rows;
  }

  private static Block.Row row(String caseId, long event, String words) {
    return Block.row(caseId, event == 0 ? words : "event " + event + ": " + words);
  }

  private static String sum(int defect, List<Finding> findings) {
    long later = findings.stream().filter(f -> f.kind() == Kind.SEALED_LATER).count();
    return (defect == 0
            ? "Every event is as it was sealed."
            : defect
                + (defect == 1 ? " case has been altered" : " cases have been altered")
                + " written. Ask who else writes to the casebook. To fix what can be fixed:"
                + " cases repair.")
        + (later == 0
            ? ""
            : " Of "
                + later
                + (later == 1 ? " case" : " cases")
                + " the seal was made later than the events, by an upgrade or a repair: whether"
                + " they were changed before, it cannot tell.");
  }

  private void write(String to, Casebook casebook, Set<String> defect) {
    if (to == null || defect.isEmpty()) {
      return;
    }
    Path file = Path.of(to);
    if (Files.exists(file)) {
      throw new UsageException(file + " exists already. Name another file, or move it away.");
    }
    CarryFile.writeTo(
        file,
        writer -> {
          for (String id : defect) {
            writer.write(casebook.asItStands(id) + "\n");
          }
        });
    console.say(file + " holds them as they are, one per line, without people.");
  }
}
