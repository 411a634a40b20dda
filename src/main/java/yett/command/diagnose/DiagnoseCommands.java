package yett.command.diagnose;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.command.common.Completions;
import yett.command.common.RoleOption;
import yett.command.common.UsageException;
import yett.command.diagnose.opening.NewCase;
import yett.command.diagnose.opening.Resuming;
import yett.command.diagnose.opening.WhoAnswers;
import yett.command.diagnose.question.CallLead;
import yett.console.Console;
import yett.desk.Desk;
import yett.knowledge.Role;

/** {@code diagnose} and {@code resume}: begin a new case, or continue one where it was left. */
public record DiagnoseCommands(Desk desk, Console console, CallLead.Maker calls) {
  private static final String DIAGNOSE =
      "Usage: diagnose [GATE] [--as caller|trainee|technician|electrician]. GATE is the name of "
          + "the gate; what is known of it from earlier cases is taken over.";

  private static final String RESUME =
      "Usage: resume [CASE] [--as caller|trainee|technician|electrician]. CASE is its number, "
          + "such as 2026-0007 or 7; without it, the case that was left last.";

  @Command(
      name = "diagnose",
      description = "find out why a gate will not run",
      help = DIAGNOSE,
      completionProvider = Completions.GATES)
  public void diagnose(
      @Arguments List<String> words,
      @Option(
              longName = "as",
              description = "who answers; a technician unless given",
              defaultValue = "technician")
          String who) {
    new NewCase(desk, console, calls).begin(words, RoleOption.of(who));
  }

  @Command(
      name = "resume",
      description = "go on with a case where it was left",
      help = RESUME,
      completionProvider = Completions.CASES)
  public void resume(
      @Arguments List<String> words,
      @Option(longName = "as", description = "who answers from now on; as before unless given")
          String who) {
    desk.prepare();
    CaseId id = id(words);
    Optional<Role> role =
        Optional.ofNullable(who).map(RoleOption::of).or(() -> new WhoAnswers(desk, console).of(id));
    if (role.isPresent()) {
      new Resuming(desk, console, calls).goOn(id, role.get());
    }
  }

  private CaseId id(List<String> words) {
    if (!words.isEmpty()) {
      return desk.casebook().find(words.get(0));
    }
    return desk.casebook().cases(CaseStatus.OPEN).stream()
        .findFirst() // the one written to last
        .map(CaseSummary::id)
        .orElseThrow(() -> new UsageException("No case is open. Begin one with: diagnose."));
  }
}
