package yett.command;

import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandExecutionException;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.exit.ExitStatusExceptionMapper;
import yett.casebook.CaseNotFound;
import yett.casebook.CasebookException;
import yett.casebook.CasebookUnreachable;
import yett.command.common.ExitException;
import yett.command.common.Mistakes;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.StandardStreams;
import yett.desk.UntrustedRules;
import yett.knowledge.KnowledgeException;
import yett.rules.RuleErrors;

/**
 * Turns the failure of a command into a line on standard error, which keeps piped output clean, and
 * an exit status.
 */
final class Failures implements ExitStatusExceptionMapper {
  private static final String WITHOUT_SERVER =
      "Until it can be reached: call takes calls and keeps them on this computer. At a gate, set"
          + " YETT_CASEBOOK to nothing to work on this computer's own casebook, and bring the case"
          + " to the server in a file afterwards: cases export, cases import"
          + " (docs/casebook.md, Without a signal).";

  private final StandardStreams output;
  private final Mistakes mistakes;
  private ExitStatus last = Sysexits.OK;

  Failures(StandardStreams output, Mistakes mistakes) {
    this.output = output;
    this.mistakes = mistakes;
  }

  @Override
  public ExitStatus apply(Exception failure) {
    last = failed(failure);
    return last;
  }

  /**
   * Reports a command line that could not be parsed.
   *
   * @param command the command that it seems to be for
   */
  void refused(UsageException wrong, List<String> words, Optional<Command> command) {
    boolean json = words.contains("--json");
    if (json && command.orElse(null) instanceof AnnotatedCommand known && known.tells(wrong)) {
      last = Sysexits.USAGE;
    } else {
      apply(wrong);
    }
  }

  /** Resets the status when a command begins. */
  void clear() {
    last = Sysexits.OK;
  }

  /** The status of the last command that was started. */
  ExitStatus last() {
    return last;
  }

  private ExitStatus failed(Throwable failure) {
    if (failure instanceof InvocationTargetException
        || failure instanceof CommandExecutionException) {
      return failed(failure.getCause());
    }
    if (failure instanceof ExitException ended) {
      return ended.status(); // the command has already said why
    }
    ExitStatus status = status(failure);
    boolean ours = status == Sysexits.SOFTWARE;
    output.tell(ours ? mistakes.told(failure) : failure.getMessage());
    if (failure instanceof CasebookUnreachable) {
      output.tell(WITHOUT_SERVER);
    }
    return status;
  }

  private static ExitStatus status(Throwable failure) {
    if (failure instanceof UsageException) {
      return Sysexits.USAGE;
    }
    if (failure instanceof KnowledgeException || failure instanceof RuleErrors) {
      return Sysexits.DATA;
    }
    if (failure instanceof UntrustedRules) {
      return Sysexits.NO_PERMISSION;
    }
    if (failure instanceof CaseNotFound) {
      return Sysexits.NO_INPUT;
    }
    if (failure instanceof CasebookException || failure instanceof UncheckedIOException) {
      return Sysexits.IO;
    }
    return Sysexits.SOFTWARE;
  }
}
