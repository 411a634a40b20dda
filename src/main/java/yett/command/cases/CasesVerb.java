package yett.command.cases;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Unreadable;
import yett.command.common.Subcommands;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code cases}: the cases in the casebook, the latest first. */
public final class CasesVerb extends Verb {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private final Workplace place;

  public CasesVerb(Workplace place) {
    super(
        "cases",
        "list the cases of the casebook",
        "Usage: cases [--open]. The latest first.",
        flag("open", "only those that are not closed"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Subcommands.refuseWords(this, context);
    List<CaseSummary> cases =
        has(context, "open")
            ? place.desk().casebook().cases(yett.casebook.CaseStatus.OPEN)
            : place.desk().casebook().cases();
    List<Unreadable> unreadable = place.desk().casebook().unreadable();
    if (cases.isEmpty() && unreadable.isEmpty()) {
      place
          .console()
          .show(Block.paragraph("The casebook holds no case yet. Begin one with: diagnose."));
      return OK;
    }
    place.console().show(new Block.Rows(cases.stream().map(CasesVerb::row).toList()));
    if (!unreadable.isEmpty()) {
      place
          .console()
          .show(
              Block.heading("Cannot be read"),
              new Block.Rows(unreadable.stream().map(u -> Block.row(u.id(), u.why())).toList()),
              Block.paragraph(
                  "Another program changed these, or they came in with what this one cannot read."
                      + " cases verify tells more, cases repair puts right what can be."));
    }
    return OK;
  }

  /** A case as a line of a list. */
  public static Block.Row row(CaseSummary line) {
    return Block.row(
        line.id().toString(),
        DAY.format(line.opened().atZone(ZoneId.systemDefault()))
            + "  "
            + line.siteId()
            + "  "
            + line.summary().title());
  }
}
