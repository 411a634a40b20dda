package yett.shell;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.Casebook;
import yett.console.Block;

/** {@code cases upgrade}: the tables of a shared casebook, brought to what this program needs. */
final class CasesUpgradeVerb extends Verb {
  private final Desk desk;

  CasesUpgradeVerb(Desk desk) {
    super(
        "cases upgrade",
        "bring the shared casebook up to date with this program",
        "Usage: cases upgrade. For whoever keeps the server, when everybody has left the casebook"
            + " and it is backed up. A casebook on this computer needs no upgrade.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (!words(context).isEmpty()) {
      throw new UsageException(getHelp());
    }
    if (desk.shared().isEmpty()) {
      desk.console()
          .show(
              Block.paragraph(
                  "The casebook is on this computer and brings itself up to date. To upgrade a"
                      + " shared one, set YETT_CASEBOOK to its address."));
      return OK;
    }
    try (Casebook casebook = Casebook.upgrade(desk.shared().get())) {
      desk.console().show(Block.paragraph(casebook.where() + " is up to date."));
    }
    return OK;
  }
}
