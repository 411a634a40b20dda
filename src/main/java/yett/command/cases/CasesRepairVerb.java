package yett.command.cases;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.Casebook;
import yett.casebook.Finding;
import yett.casebook.NewEvent;
import yett.casebook.Repaired;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.interview.EventText;
import yett.knowledge.Role;

/** {@code cases repair}: makes cases readable again that another program damaged. */
public final class CasesRepairVerb extends Verb {
  private final Workplace place;

  public CasesRepairVerb(Workplace place) {
    super(
        "cases repair",
        "put right what is damaged in the casebook, as far as it can be",
        "Usage: cases repair [CASE...]. Without a case, all that cases verify finds. Make a back-up"
            + " before. A case gets a number, times and events that can be read; what is gone"
            + " stays gone, and a note stands in its place.desk(). What was changed stays as it was found."
            + " How it stood before is kept in the casebook, in the table set_apart.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Casebook casebook = place.desk().casebook();
    Instant now = place.desk().clock().instant();
    List<String> all =
        casebook.verify().stream()
            .filter(Finding::isDefect)
            .map(Finding::caseId)
            .distinct()
            .toList();
    Set<String> chosen =
        words(context).stream()
            .map(typed -> all.contains(typed) ? typed : casebook.find(typed).toString())
            .collect(Collectors.toSet());
    List<String> cases =
        all.stream().filter(id -> chosen.isEmpty() || chosen.contains(id)).toList();
    if (cases.isEmpty()) {
      place.console().show(Block.paragraph("There is nothing to repair."));
      return OK;
    }
    for (String id : cases) {
      Repaired repaired = casebook.repair(id, lost(now), now);
      place
          .console()
          .show(Block.paragraph("Case " + id + ": " + String.join("; ", repaired.done()) + "."));
    }
    place
        .console()
        .show(
            Block.paragraph(
                "How they stood before is kept in the casebook. Their seals vouch only from now"
                    + " on."));
    return OK;
  }

  private static NewEvent lost(Instant now) {
    Event note = new Event.Noted("An entry that stood here is gone.");
    return new NewEvent(now, Role.CALLER.word(), OpenCase.type(note), EventText.write(note));
  }
}
