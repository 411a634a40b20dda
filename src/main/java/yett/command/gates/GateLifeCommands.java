package yett.command.gates;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.Completions;
import yett.command.common.GateNames;
import yett.command.common.UsageException;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.GateMemory;

/** Commands that rename a gate, merge two names of one gate, or retire a gate. */
public record GateLifeCommands(Desk desk, Console console) {
  private static final String RENAME =
      "Usage: gates rename \"OLD NAME\" \"NEW NAME\". Cases and readings go with the gate, through"
          + " cases export and import too; what was written in its cases stays as it was written.";

  private static final String MERGE =
      "Usage: gates merge \"GATE\" \"GATE THAT STAYS\". For one gate that was entered"
          + " under two names: cases and readings of the first go to the second, for good."
          + " The description of the second stays. Exported files do not carry a merge:"
          + " another casebook that has both has to be merged there.";

  private static final String RETIRE =
      "Usage: gates retire GATE. For a gate that is gone or no longer looked after: it"
          + " is in no list and never due; its page and cases stay. gates restore GATE brings"
          + " it back.";

  private static final String RESTORE = "Usage: gates restore GATE. Brings a retired gate back.";

  @Command(
      name = {"gates", "rename"},
      description = "give a gate another name",
      help = RENAME,
      completionProvider = Completions.GATES)
  public void rename(@Arguments List<String> words) {
    UsageException.when(words.size() != 2, RENAME);
    String from = exactly(words.get(0));
    String to = words.get(1).strip();
    if (to.isEmpty() || !GateNames.isName(to)) {
      throw new UsageException(to.isEmpty() ? GateNames.NO_NAME : GateNames.refusal(to));
    }
    if (from.equals(to)) {
      throw new UsageException("The gate already has that name.");
    }
    desk.casebook().rename(from, to, desk.clock().instant());
    console.say("\"" + from + "\" is called \"" + to + "\" now.");
  }

  @Command(
      name = {"gates", "merge"},
      description = "merge two entries of the same gate",
      help = MERGE,
      completionProvider = Completions.GATES)
  public void merge(@Arguments List<String> words) {
    UsageException.when(words.size() != 2, MERGE);
    String from = exactly(words.get(0));
    String into = exactly(words.get(1));
    if (from.equals(into)) {
      throw new UsageException("That is one gate already. Name two.");
    }
    desk.casebook().merge(from, into, desk.clock().instant());
    console.say(
        "What was \"" + from + "\" belongs to \"" + into + "\" now: gates show \"" + into + "\".");
  }

  @Command(
      name = {"gates", "retire"},
      description = "take a gate out of the lists",
      help = RETIRE,
      completionProvider = Completions.GATES)
  public void retire(@Arguments List<String> words) {
    String gate = named(words, RETIRE);
    if (isRetired(gate)) {
      throw new UsageException(gate + " is retired already.");
    }
    LocalDate today = LocalDate.ofInstant(desk.clock().instant(), ZoneId.systemDefault());
    new GateMemory(desk.casebook(), desk.clock()).retire(gate, today);
    console.say(
        gate + " is retired. Its page stays; to bring it back: gates restore \"" + gate + "\".");
  }

  @Command(
      name = {"gates", "restore"},
      description = "bring a retired gate back",
      help = RESTORE,
      completionProvider = Completions.GATES)
  public void restore(@Arguments List<String> words) {
    String gate = named(words, RESTORE);
    if (!isRetired(gate)) {
      throw new UsageException(gate + " is not retired.");
    }
    new GateMemory(desk.casebook(), desk.clock()).restore(gate);
    console.say(gate + " is back in the lists.");
  }

  private boolean isRetired(String gate) {
    return desk.casebook().site(gate).flatMap(GateMemory::retired).isPresent();
  }

  private String named(List<String> words, String usage) {
    UsageException.when(words.isEmpty(), usage);
    return exactly(String.join(" ", words));
  }

  private String exactly(String typed) {
    return new Gates(desk, console).exactly(typed);
  }
}
