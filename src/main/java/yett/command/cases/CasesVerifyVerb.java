package yett.command.cases;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CarryFile;
import yett.casebook.Casebook;
import yett.casebook.Finding;
import yett.casebook.Finding.Kind;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.command.diagnose.UnusableEvents;
import yett.console.Block;
import yett.desk.OpenCase;

/** {@code cases verify}: whether everything in the casebook is as it was written. */
public final class CasesVerifyVerb extends Verb {
  private static final int SHOWN = 200;

  private final Workplace place;

  public CasesVerifyVerb(Workplace place) {
    super(
        "cases verify",
        "see whether everything in the casebook is as it was written",
        "Usage: cases verify [--to FILE]. Nothing is changed. Each event is sealed when it is written;"
            + " what was changed or taken away since by another program is told, and what cannot"
            + " be read or cannot be meant. With --to, the cases that are not in order are written"
            + " to a file just as they stand. cases repair puts right what can be.",
        value("to", "the file to write; it must not be there yet"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (!words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    Casebook casebook = place.desk().casebook();
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
      place.console().show(new Block.Rows(rows));
    }
    place.console().show(Block.paragraph(sum(defect.size(), findings)));
    write(context, casebook, defect);
    return defect.isEmpty() ? OK : DATA;
  }

  /** What can be read and cannot be meant: the interview passes over it. */
  private List<Block.Row> doubts(Casebook casebook) {
    var notTaken = new UnusableEvents(place.desk().base());
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

  private void write(CommandContext context, Casebook casebook, Set<String> defect) {
    if (!has(context, "to") || defect.isEmpty()) {
      return;
    }
    Path file = Path.of(option(context, "to", ""));
    if (Files.exists(file)) {
      throw new UsageException(file + " is there already. Name another file, or move it away.");
    }
    CarryFile.writeTo(
        file,
        to -> {
          for (String id : defect) {
            to.write(casebook.asItStands(id) + "\n");
          }
        });
    place
        .console()
        .show(Block.paragraph(file + " holds them as they stand, one a line, without people."));
  }
}
