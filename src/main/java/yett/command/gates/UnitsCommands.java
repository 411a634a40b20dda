package yett.command.gates;

import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.quantity.Units;

/**
 * {@code units}: chooses the units in which the people at this computer read lengths, forces and so
 * on.
 */
public record UnitsCommands(Desk desk, Console console) {
  private static final String UNITS =
      "Usage: units [us|si]. us: feet, inches, pounds, degF; si: metres, newtons,"
          + " kilograms, degC. Your choice is kept. Type readings in either; they stay as you"
          + " typed them.";

  @Command(name = "units", description = "work in US customary or in SI units", help = UNITS)
  public void units(@Arguments List<String> words) {
    UsageException.when(words.size() > 1, UNITS);
    if (words.size() == 1) {
      desk.workIn(
          Units.named(words.get(0).toLowerCase(Locale.ROOT))
              .orElseThrow(() -> new UsageException(UNITS)));
    }
    console.say(
        desk.units() == Units.US
            ? "You work in US customary units: ft, in, lb, lbf, degF. SI again: units si."
            : "You work in SI units: m, mm, kg, N, degC. US customary: units us.");
  }
}
