package yett.command.cases;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.Casebook;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code cases upgrade}: the tables of a shared casebook, brought to what this program needs. */
public final class CasesUpgradeVerb extends Verb {
  private final Workplace place;

  public CasesUpgradeVerb(Workplace place) {
    super(
        "cases upgrade",
        "bring the shared casebook up to date with this program",
        "Usage: cases upgrade. For whoever keeps the server, when everybody has left the casebook"
            + " and it is backed up. A casebook on this computer needs no upgrade.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (!words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    if (place.desk().shared().isEmpty()) {
      place
          .console()
          .show(
              Block.paragraph(
                  "The casebook is on this computer and brings itself up to date. To upgrade a"
                      + " shared one, set YETT_CASEBOOK to its address."));
      return OK;
    }
    try (Casebook casebook = Casebook.upgrade(place.desk().shared().get())) {
      place.console().show(Block.paragraph(casebook.where() + " is up to date."));
    }
    return OK;
  }
}
