package yett.command;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandExecutionException;
import org.springframework.shell.core.command.CommandExecutor;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;
import yett.casebook.CaseNotFound;
import yett.casebook.CasebookException;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.Reply;
import yett.desk.UntrustedRules;
import yett.knowledge.KnowledgeException;
import yett.rules.RuleErrors;

/** Runs the command of the command line, or asks for commands until the person has enough. */
public final class Runner {
  private static final int SOFTWARE = 70;
  private static final int IO = 74;
  private static final int NO_PERMISSION = 77;

  private final Workplace place;
  private final CommandRegistry commands;
  private final CommandLine commandLine;
  private int exitCode;

  public Runner(Workplace place, CommandRegistry commands) {
    this.place = place;
    this.commands = commands;
    this.commandLine = new CommandLine(commands);
  }

  /** The exit status of the command, or of the last one. */
  public int run(String... words) {
    if (words.length > 0) {
      exitCode = execute(Arrays.asList(words));
    } else {
      converse();
    }
    if (place.output().lost() && exitCode == Verb.OK.code()) {
      exitCode =
          tell("Not all of the output could be written: the disk is full, or nobody reads it.", IO);
    }
    return exitCode;
  }

  private void converse() {
    place
        .console()
        .show(
            Block.paragraph(
                "Yett finds out why a sliding gate will not run. Type diagnose to begin, help for "
                    + "all commands, quit to leave."));
    List<String> names = commands.getCommands().stream().map(Command::getName).sorted().toList();
    while (true) {
      Reply input = place.console().ask("yett> ", names);
      if (input instanceof Reply.EndOfInput) {
        return;
      }
      if (input instanceof Reply.Line line) {
        String text = line.text().strip();
        if (text.equals("quit") || text.equals("exit")) {
          return;
        }
        if (!text.isEmpty()) {
          exitCode = execute(text);
        }
      }
    }
  }

  private int execute(String line) {
    List<String> words = CommandLine.words(line);
    try {
      return execute(commandLine.parse(words));
    } catch (UsageException e) {
      return refused(words, e);
    }
  }

  private int execute(List<String> typed) {
    try {
      List<String> words = place.choose(asHelp(typed));
      return execute(commandLine.parse(words));
    } catch (UsageException e) {
      return refused(typed, e);
    }
  }

  private int refused(List<String> words, UsageException wrong) {
    boolean told =
        commandLine.command(words).orElse(null) instanceof Verb verb && verb.tells(wrong, words);
    return told ? Verb.USAGE.code() : tell(wrong.getMessage(), Verb.USAGE.code());
  }

  /** Many are used to ask with --help, before a command or behind it. */
  private static List<String> asHelp(List<String> words) {
    if (!words.contains("--help") && !words.contains("-h")) {
      return words;
    }
    List<String> help = new ArrayList<>(List.of("help"));
    words.stream().filter(w -> !w.startsWith("-")).forEach(help::add);
    return help;
  }

  private int execute(ParsedInput parsed) {
    // Commands write by the desk's output, which cleans; this one would not.
    PrintWriter none = new PrintWriter(Writer.nullWriter());
    CommandContext context = new CommandContext(parsed, commands, none, new InputReader() {});
    try {
      return new CommandExecutor(commands).execute(context).code();
    } catch (CommandExecutionException e) {
      return failed(e.getCause() == null ? e : e.getCause());
    } catch (RuntimeException | LinkageError | VirtualMachineError e) {
      return failed(e);
    }
  }

  private int failed(Throwable cause) {
    if (cause instanceof UsageException) {
      return tell(cause.getMessage(), Verb.USAGE.code());
    }
    if (cause instanceof KnowledgeException || cause instanceof RuleErrors) {
      return tell(cause.getMessage(), Verb.DATA.code());
    }
    if (cause instanceof UntrustedRules) {
      return tell(cause.getMessage(), NO_PERMISSION);
    }
    if (cause instanceof CaseNotFound) {
      return tell(cause.getMessage(), Verb.NO_INPUT.code());
    }
    if (cause instanceof CasebookException || cause instanceof UncheckedIOException) {
      return tell(cause.getMessage(), IO);
    }
    return tell(place.mistakes().told(cause), SOFTWARE);
  }

  /** Errors go to standard error, so that output can be piped. */
  private int tell(String message, int code) {
    place.output().tell(message);
    return code;
  }
}
