package yett.command.cases;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.interview.Moment;
import yett.knowledge.Role;
import yett.record.CaseRecord;
import yett.record.HandOverSheet;

/** {@code record}: a case as Markdown, for the file or for the next level. */
public final class RecordVerb extends Verb {
  private final Workplace place;

  public RecordVerb(Workplace place) {
    super(
        "record",
        "the record of a case, as Markdown",
        "Usage: record CASE [--hand-over]. CASE is its number, such as 2026-0007 or 7. The text "
            + "goes to standard output: record 7 > case.md keeps it in a file.",
        flag("hand-over", "the hand-over sheet for the next level instead of the record"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    CaseId id = place.desk().casebook().find(words(context).get(0));
    try (OpenCase open = place.desk().open(id, Role.TECHNICIAN)) {
      Moment moment = open.moment();
      String gate = moment.state().opened().map(Event.Opened::site).orElse("");
      place
          .output()
          .print(
              has(context, "hand-over")
                  ? new HandOverSheet(place.desk().expertise())
                      .markdown(moment, id.toString(), gate)
                  : new CaseRecord(place.desk().expertise().base())
                      .markdown(moment, id.toString(), gate));
    }
    return OK;
  }
}
