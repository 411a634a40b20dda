package yett.command.cases;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.casebook.Casebook;
import yett.casebook.Finding;
import yett.casebook.NewEvent;
import yett.casebook.Repaired;
import yett.command.common.Completions;
import yett.console.Console;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.knowledge.Role;

/**
 * {@code cases repair} and {@code cases upgrade}: repair a damaged casebook and bring an old one up
 * to date.
 */
public record CasebookCommands(Desk desk, Console console) {

  private static final String REPAIR =
      "Usage: cases repair [CASE...]. Without CASE, repairs everything that cases"
          + " verify finds. Make a backup first. A case gets a number, times and events that"
          + " can be read; what is lost stays lost, with a note in its place. What was"
          + " altered stays as found. The state before the repair is kept in the casebook, in"
          + " the table set_apart.";

  private static final String UPGRADE =
      "Usage: cases upgrade. For whoever runs the server, once nobody is using the casebook and"
          + " it has been backed up. A casebook on this computer needs no upgrade.";

  @Command(
      name = {"cases", "repair"},
      description = "put right what is damaged in the casebook, as far as it can be",
      help = REPAIR,
      completionProvider = Completions.CASES)
  public void repair(@Arguments List<String> words) {
    Casebook casebook = desk.casebook();
    Instant now = desk.clock().instant();
    List<String> all =
        casebook.verify().stream()
            .filter(Finding::isDefect)
            .map(Finding::caseId)
            .distinct()
            .toList();
    Set<String> chosen =
        words.stream()
            .map(typed -> all.contains(typed) ? typed : casebook.find(typed).toString())
            .collect(Collectors.toSet());
    List<String> cases =
        all.stream().filter(id -> chosen.isEmpty() || chosen.contains(id)).toList();
    if (cases.isEmpty()) {
      console.say("There is nothing to repair.");
      return;
    }
    for (String id : cases) {
      Repaired repaired = casebook.repair(id, lost(now), now);
      console.say("Case " + id + ": " + String.join("; ", repaired.done()) + ".");
    }
    console.say(
        "Their state before the repair is kept in the casebook. Their seals count from now"
            + " on.");
  }

  @Command(
      name = {"cases", "upgrade"},
      description = "bring the shared casebook up to date with this program",
      help = UPGRADE)
  public void upgrade() {
    if (desk.shared().isEmpty()) {
      console.say(
          "The casebook is on this computer and brings itself up to date. To upgrade a"
              + " shared one, set YETT_CASEBOOK to its address.");
      return;
    }
    try (Casebook casebook = Casebook.upgrade(desk.shared().get())) {
      console.say(casebook.where() + " is up to date.");
    }
  }

  private static NewEvent lost(Instant now) {
    Event note = new Event.Noted("An entry that was here is lost.");
    return new NewEvent(now, Role.CALLER.word(), OpenCase.type(note), EventText.write(note));
  }
}
