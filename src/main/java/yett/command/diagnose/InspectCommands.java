package yett.command.diagnose;

import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.RoleOption;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.command.diagnose.opening.NewCase;
import yett.command.diagnose.question.CallLead;
import yett.console.Console;
import yett.desk.Desk;
import yett.knowledge.InspectionKind;
import yett.knowledge.Names;
import yett.knowledge.Role;

/** {@code inspect}: inspects a gate place by place, at commissioning and once a year. */
public record InspectCommands(Desk desk, Console console, CallLead.Maker calls) {
  private static final String INSPECT =
      "Usage: inspect [GATE] [--for commissioning|service] [--as trainee|technician|electrician]."
          + " Commissioning is for a newly mounted gate, or one whose chain, board, operator or"
          + " limits were changed; service is the planned visit. It can be left at any point with"
          + " save, and goes on with resume. Its sheet: record CASE.";

  @Command(
      name = "inspect",
      description = "go through a gate for commissioning or service",
      help = INSPECT,
      completionProvider = Completions.GATES)
  public void inspect(
      @Arguments List<String> words,
      @Option(
              longName = "for",
              description = "commissioning or service; service unless given",
              defaultValue = "service")
          String what,
      @Option(
              longName = "as",
              description = "who inspects; a technician unless given",
              defaultValue = "technician")
          String who) {
    Role role = RoleOption.of(who);
    if (role == Role.CALLER) {
      throw new UsageException("Nobody inspects a gate over the telephone. " + INSPECT);
    }
    new NewCase(desk, console, calls).inspect(words, role, kind(what));
  }

  private static InspectionKind kind(String word) {
    String text = word.strip().toLowerCase(Locale.ROOT);
    if (!InspectionKind.words().contains(text)) {
      throw new UsageException(
          Words.quoted(word)
              + " is not a kind of inspection. "
              + Names.advice(word, InspectionKind.words()));
    }
    return InspectionKind.named(text);
  }
}
