package yett.shell;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseSummary;
import yett.console.Block;

/** {@code cases find}: the cases at a gate, of a cause, with a word in them, of a time. */
final class CasesFindVerb extends Verb {
  private final Desk desk;

  CasesFindVerb(Desk desk) {
    super(
        "cases find",
        "find cases by gate, cause, text, day and state",
        "Usage: cases find [TEXT] " + Sought.WORDS + " TEXT stands somewhere in the case.",
        Sought.options());
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    String text = String.join(" ", words(context)).strip();
    if (text.isEmpty() && context.parsedInput().options().isEmpty()) {
      throw new UsageException(getHelp());
    }
    List<CaseSummary> found =
        desk.casebook()
            .search(
                new Sought(context, ZoneId.systemDefault())
                    .search(desk.base(), Optional.of(text).filter(t -> !t.isEmpty())));
    if (found.isEmpty()) {
      desk.console().show(Block.paragraph("There is no such case."));
      return OK;
    }
    desk.console()
        .show(
            new Block.Rows(found.stream().map(CasesVerb::row).toList()),
            Block.paragraph(found.size() == 1 ? "1 case." : found.size() + " cases."));
    return OK;
  }
}
