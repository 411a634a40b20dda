package yett.command.cases;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CarryFile;
import yett.casebook.Casebook;
import yett.casebook.Finding;
import yett.casebook.Finding.Kind;
import yett.casebook.NewEvent;
import yett.casebook.Repaired;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.diagnose.UnusableEvents;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.interview.EventText;
import yett.knowledge.Role;

/** {@code cases verify, repair, upgrade}: the casebook looked after. */
public final class CasebookCommands {
  private static final int SHOWN = 200;

  private static final String VERIFY =
      "Usage: cases verify [--to FILE]. Nothing is changed. Each event is sealed when it is written;"
          + " what was changed or taken away since by another program is told, and what cannot"
          + " be read or cannot be meant. With --to, the cases that are not in order are written"
          + " to a file just as they stand. cases repair puts right what can be.";

  private static final String REPAIR =
      "Usage: cases repair [CASE...]. Without a case, all that cases verify finds. Make a back-up"
          + " before. A case gets a number, times and events that can be read; what is gone"
          + " stays gone, and a note stands in its place. What was changed stays as it was found."
          + " How it stood before is kept in the casebook, in the table set_apart.";

  private static final String UPGRADE =
      "Usage: cases upgrade. For whoever keeps the server, when everybody has left the casebook"
          + " and it is backed up. A casebook on this computer needs no upgrade.";

  private final Desk desk;
  private final Console console;

  public CasebookCommands(Desk desk, Console console) {
    this.desk = desk;
    this.console = console;
  }

  @Command(
      name = {"cases", "verify"},
      description = "see whether everything in the casebook is as it was written",
      help = VERIFY)
  public void verify(
      @Option(longName = "to", description = "the file to write; it must not be there yet")
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
    console.show(Block.paragraph(sum(defect.size(), findings)));
    write(to, casebook, defect);
    ExitException.unless(defect.isEmpty(), Sysexits.DATA);
  }

  @Command(
      name = {"cases", "repair"},
      description = "put right what is damaged in the casebook, as far as it can be",
      help = REPAIR,
      completionProvider = Completions.CASES)
  public void repair(@Arguments List<String> words) {
    Casebook casebook = desk.casebook();
    Instant now = desk.clock().instant();
    List<String> all =
        casebook.verify().stream()
            .filter(Finding::isDefect)
            .map(Finding::caseId)
            .distinct()
            .toList();
    Set<String> chosen =
        words.stream()
            .map(typed -> all.contains(typed) ? typed : casebook.find(typed).toString())
            .collect(Collectors.toSet());
    List<String> cases =
        all.stream().filter(id -> chosen.isEmpty() || chosen.contains(id)).toList();
    if (cases.isEmpty()) {
      console.show(Block.paragraph("There is nothing to repair."));
      return;
    }
    for (String id : cases) {
      Repaired repaired = casebook.repair(id, lost(now), now);
      console.show(Block.paragraph("Case " + id + ": " + String.join("; ", repaired.done()) + "."));
    }
    console.show(
        Block.paragraph(
            "How they stood before is kept in the casebook. Their seals vouch only from now"
                + " on."));
  }

  @Command(
      name = {"cases", "upgrade"},
      description = "bring the shared casebook up to date with this program",
      help = UPGRADE)
  public void upgrade() {
    if (desk.shared().isEmpty()) {
      console.show(
          Block.paragraph(
              "The casebook is on this computer and brings itself up to date. To upgrade a"
                  + " shared one, set YETT_CASEBOOK to its address."));
      return;
    }
    try (Casebook casebook = Casebook.upgrade(desk.shared().get())) {
      console.show(Block.paragraph(casebook.where() + " is up to date."));
    }
  }

  /** What can be read and cannot be meant: the interview passes over it. */
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
                + (defect == 1 ? " case is not as it was" : " cases are not as they were")
                + " written. Ask who else writes to the casebook. What can be put"
                + " right: cases repair.")
        + (later == 0
            ? ""
            : " Of "
                + later
                + (later == 1 ? " case" : " cases")
                + " the seal was made later than the events, by an upgrade or a repair: whether they"
                + " were changed before, it cannot tell.");
  }

  private void write(String to, Casebook casebook, Set<String> defect) {
    if (to == null || defect.isEmpty()) {
      return;
    }
    Path file = Path.of(to);
    if (Files.exists(file)) {
      throw new UsageException(file + " is there already. Name another file, or move it away.");
    }
    CarryFile.writeTo(
        file,
        writer -> {
          for (String id : defect) {
            writer.write(casebook.asItStands(id) + "\n");
          }
        });
    console.show(Block.paragraph(file + " holds them as they stand, one a line, without people."));
  }

  private static NewEvent lost(Instant now) {
    Event note = new Event.Noted("An entry that stood here is gone.");
    return new NewEvent(now, Role.CALLER.word(), OpenCase.type(note), EventText.write(note));
  }
}
