package yett.shell;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Unreadable;
import yett.console.Block;

/** {@code cases}: the cases in the casebook, the latest first. */
final class CasesVerb extends Verb {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private final Desk desk;

  CasesVerb(Desk desk) {
    super(
        "cases",
        "list the cases of the casebook",
        "Usage: cases [--open]. The latest first.",
        flag("open", "only those that are not closed"));
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Subcommands.refuseWords(this, context);
    List<CaseSummary> cases =
        has(context, "open")
            ? desk.casebook().cases(yett.casebook.CaseState.OPEN)
            : desk.casebook().cases();
    List<Unreadable> unreadable = desk.casebook().unreadable();
    if (cases.isEmpty() && unreadable.isEmpty()) {
      desk.console()
          .show(Block.paragraph("The casebook holds no case yet. Begin one with: diagnose."));
      return OK;
    }
    desk.console().show(new Block.Rows(cases.stream().map(CasesVerb::row).toList()));
    if (!unreadable.isEmpty()) {
      desk.console()
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
  static Block.Row row(CaseSummary line) {
    return Block.row(
        line.id().toString(),
        DAY.format(line.opened().atZone(ZoneId.systemDefault()))
            + "  "
            + line.siteId()
            + "  "
            + line.summary().title());
  }
}
