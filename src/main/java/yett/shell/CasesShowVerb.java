package yett.shell;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;
import yett.interview.Event;
import yett.knowledge.Role;

/** {@code cases show}: where a case stands and how its belief came about. */
final class CasesShowVerb extends Verb {
  private final Desk desk;

  CasesShowVerb(Desk desk) {
    super(
        "cases show",
        "where a case stands, and how it came to that",
        "Usage: cases show CASE. CASE is its number, such as 2026-0007 or 7.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    var id = desk.casebook().find(words(context).get(0));
    try (OpenCase open = desk.open(id, Role.TECHNICIAN)) {
      var state = open.moment().state();
      var views = new StepViews(desk.expertise().base());
      desk.console()
          .show(
              Block.heading(
                  "Case " + id + " · " + state.opened().map(Event.Opened::site).orElse("")),
              Block.paragraph(
                  state.closed().map(e -> "Closed: " + e.words() + ".").orElse("Open.")));
      desk.console().show(new NotTaken(desk.base()).blocks(open.moment()));
      desk.console().show(new ReasonViews(desk.expertise().base(), views).accounts(open.moment()));
    }
    return OK;
  }
}
