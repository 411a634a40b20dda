package yett.command.cases;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.command.diagnose.ReasonViews;
import yett.command.diagnose.StepViews;
import yett.command.diagnose.UnusableEvents;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.knowledge.Role;

/** {@code cases show}: where a case stands and how its belief came about. */
public final class CasesShowVerb extends Verb {
  private final Workplace place;

  public CasesShowVerb(Workplace place) {
    super(
        "cases show",
        "where a case stands, and how it came to that",
        "Usage: cases show CASE. CASE is its number, such as 2026-0007 or 7.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    var id = place.desk().casebook().find(words(context).get(0));
    try (OpenCase open = place.desk().open(id, Role.TECHNICIAN)) {
      var state = open.moment().state();
      var views = new StepViews(place.desk().expertise().base());
      place
          .console()
          .show(
              Block.heading(
                  "Case " + id + " · " + state.opened().map(Event.Opened::site).orElse("")),
              Block.paragraph(
                  state.closed().map(e -> "Closed: " + e.words() + ".").orElse("Open.")));
      place.console().show(new UnusableEvents(place.desk().base()).blocks(open.moment()));
      place
          .console()
          .show(new ReasonViews(place.desk().expertise().base(), views).accounts(open.moment()));
    }
    return OK;
  }
}
