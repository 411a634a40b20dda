package yett.command.cases;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CarryFile;
import yett.casebook.CaseId;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.Progress;

/** {@code cases export}: cases in a file, to be carried to another casebook. */
public final class CasesExportVerb extends Verb {
  private final Workplace place;

  public CasesExportVerb(Workplace place) {
    super(
        "cases export",
        "write cases to a file, to be carried to another casebook",
        "Usage: cases export CASE... --to FILE, or --all or --open instead of the cases. The other"
            + " casebook takes the file in with: cases import FILE. Names and telephone numbers"
            + " stay here, unless you add --people.",
        flag("all", "every case"),
        flag("open", "every case that is not closed"),
        flag("people", "with the names and telephone numbers that are kept with the cases"),
        value("to", "the file to write; it must not be there yet"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    boolean all = has(context, "all") || has(context, "open");
    if (words(context).isEmpty() != all || !has(context, "to")) {
      throw new UsageException(getHelp());
    }
    Path file = Path.of(option(context, "to", ""));
    if (Files.exists(file)) {
      throw new UsageException(file + " is there already. Name another file, or move it away.");
    }
    List<CaseSummary> cases = chosen(context);
    boolean people = has(context, "people");
    CarryFile.writeTo(file, to -> write(to, cases, people));
    place
        .console()
        .show(
            Block.paragraph(
                file
                    + " holds "
                    + (cases.size() == 1 ? "1 case" : cases.size() + " cases")
                    + (people
                        ? ", with what is known of people."
                        : ", without what is known of people.")));
    return OK;
  }

  private List<CaseSummary> chosen(CommandContext context) {
    Casebook casebook = place.desk().casebook();
    if (has(context, "all")) {
      return casebook.cases();
    }
    if (has(context, "open")) {
      return casebook.cases(yett.casebook.CaseStatus.OPEN);
    }
    List<CaseId> ids = words(context).stream().map(casebook::find).distinct().toList();
    return ids.stream().map(casebook::summary).toList();
  }

  private void write(Writer to, List<CaseSummary> cases, boolean people) throws IOException {
    Casebook casebook = place.desk().casebook();
    var sites =
        cases.stream()
            .map(CaseSummary::siteId)
            .distinct()
            .flatMap(id -> casebook.carry(id).stream())
            .toList();
    CarryFile.writeHead(to, place.desk().clock().instant(), cases.size(), sites.size());
    for (var site : sites) {
      CarryFile.write(to, site);
    }
    try (Progress progress = place.console().start("cases", cases.size())) {
      for (CaseSummary line : cases) {
        CarryFile.write(to, casebook.carry(line.id(), people));
        progress.step();
      }
    }
  }
}
