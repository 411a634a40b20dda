package yett.command.practice;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.practice.Notebook;

/** {@code practice progress}: how the exercises went so far, area by area. */
public final class PracticeProgressVerb extends Verb {
  private final Workplace place;

  public PracticeProgressVerb(Workplace place) {
    super(
        "practice progress",
        "tell how practice went so far, the weakest area first",
        "Usage: practice progress. It is kept in a file of your own beside the casebook.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (!words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    place
        .console()
        .show(
            new ReckoningViews(place.desk().base())
                .progress(new Notebook(place.desk().data()).progress()));
    return OK;
  }
}
