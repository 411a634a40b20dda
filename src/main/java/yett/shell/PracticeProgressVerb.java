package yett.shell;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;

/** {@code practice progress}: how the exercises went so far, area by area. */
final class PracticeProgressVerb extends Verb {
  private final Desk desk;

  PracticeProgressVerb(Desk desk) {
    super(
        "practice progress",
        "tell how practice went so far, the weakest area first",
        "Usage: practice progress. It is kept in a file of your own beside the casebook.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (!words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    desk.console().show(new ReckoningViews(desk.base()).progress(desk.notebook().progress()));
    return OK;
  }
}
