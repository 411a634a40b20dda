package yett.command.gates;

import java.util.Comparator;
import java.util.List;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;
import yett.figures.NextInspection;

/** {@code gates due}: lists the gates that have to be inspected, the earliest first. */
public record DueCommands(Desk desk, Console console) {
  private static final String DUE =
      "Usage: gates due. A gate is due a set number of months after the last inspection it passed"
          + " (inspect-every in firm.yaml, 12 unless set), and at once if it has passed none.";

  private record Due(String gate, NextInspection next) {}

  @Command(
      name = {"gates", "due"},
      description = "which gates are to be inspected, and when",
      help = DUE)
  public void due(@Arguments List<String> typed) {
    UsageException.when(!typed.isEmpty(), DUE);
    DueWords words = new DueWords(desk);
    List<Due> all =
        new Gates(desk, console)
            .all().stream()
                .filter(g -> g.retired().isEmpty())
                .map(g -> new Due(g.name(), words.next(g)))
                .sorted(Comparator.comparing((Due d) -> d.next().day()).thenComparing(Due::gate))
                .toList();
    if (all.isEmpty()) {
      console.say("The casebook has no gates yet. A gate is added with its first case: inspect.");
      return;
    }
    console.show(
        new Block.Rows(all.stream().map(d -> Block.row(d.gate(), words.words(d.next()))).toList()));
    long due = all.stream().filter(d -> words.isDue(d.next())).count();
    console.say(
        due + " of " + all.size() + " due. An inspection every " + words.months() + " months.");
  }
}
