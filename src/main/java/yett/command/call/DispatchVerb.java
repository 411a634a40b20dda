package yett.command.call;

import java.time.ZoneId;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.desk.OpenCase;
import yett.dispatch.DispatchJson;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.interview.Event;
import yett.knowledge.Role;
import yett.record.DispatchPage;

/** {@code dispatch}: what somebody who is sent to a gate has to know, as often as it is wanted. */
public final class DispatchVerb extends Verb {
  private final Workplace place;

  public DispatchVerb(Workplace place) {
    super(
        "dispatch",
        "the sheet for whoever is sent to a gate",
        "Usage: dispatch CASE [--json]. CASE is its number, such as 2026-0007 or 7. The sheet goes "
            + "to standard output as Markdown; its JSON keeps to shared/dispatch.schema.json.",
        flag("json", "JSON instead of Markdown"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    CaseId id = place.desk().casebook().find(words(context).get(0));
    try (OpenCase open = place.desk().open(id, Role.CALLER)) {
      String gate = open.moment().state().opened().map(Event.Opened::site).orElse("");
      DispatchSheet sheet =
          new Dispatcher(place.desk().expertise(), ZoneId.systemDefault())
              .sheet(open.moment(), id.toString(), gate);
      if (has(context, "json")) {
        place.output().json(DispatchJson.write(sheet));
      } else {
        place.output().print(DispatchPage.markdown(sheet));
      }
    }
    return OK;
  }
}
