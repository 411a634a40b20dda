package yett.command;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandExecutionException;
import org.springframework.shell.core.command.CommandExecutor;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.command.diagnose.sitting.Ears;
import yett.console.Block;
import yett.console.StandardStreams;

/** Runs the command of the command line, or prompts for commands until the person leaves. */
public final class Shell {
  private static final String GREETING =
      "Yett finds out why a sliding gate will not run. Type diagnose to begin, help for all"
          + " commands, quit to leave.";

  private final Workplace place;
  private final Failures failures;
  private final CommandRegistry commands;
  private final CommandLine commandLine;

  private Shell(Workplace place) {
    this.place = place;
    this.failures = new Failures(place.output(), place.mistakes());
    this.commands = new AllCommands(place, failures).registry();
    this.commandLine = new CommandLine(commands);
  }

  /**
   * Runs the command given by the words, or prompts for commands if there are none.
   *
   * @param environment settings: {@code YETT_HOME} and others, {@code TERM}, {@code COLUMNS}
   * @return the exit status of the command, or of the last one, as numbered by the BSD list
   *     sysexits
   */
  public static int run(Map<String, String> environment, String... words) {
    return run(environment, Clock.systemUTC(), words);
  }

  /** The same with another clock, so that visits over years can be tried in one run. */
  public static int run(Map<String, String> environment, Clock clock, String... words) {
    QuietLogging.choose();
    try (Workplace place = new Workplace(environment, clock)) {
      return new Shell(place).run(List.of(words));
    } finally {
      Ears.settle();
    }
  }

  private int run(List<String> words) {
    Optional<BenchSession> bench = BenchSession.of(words);
    if (words.isEmpty()) {
      converse(GREETING, "yett> ", typed -> typed);
    } else if (bench.isPresent() && place.console().interactive()) {
      BenchSession session = bench.get();
      converse(
          session.greeting(),
          session.prompt(),
          typed ->
              place.choose(session.whole(typed, name -> commands.getCommandByName(name) != null)));
    } else if (bench.isPresent()) {
      failures.apply(
          new UsageException(
              "knowledge FOLDER opens a prompt, which needs a terminal. In a script, give each"
                  + " command in full, such as: knowledge check "
                  + words.get(1)));
    } else {
      execute(words);
    }
    boolean well = failures.last() == Sysexits.OK;
    if (well && place.output().lost()) {
      if (!StandardStreams.feedsProgram()) {
        place
            .output()
            .tell("Not all output could be written: the disk is full, or nothing is reading it.");
      }
      return Sysexits.IO.code();
    }
    return failures.last().code();
  }

  private void converse(String greeting, String prompt, UnaryOperator<List<String>> whole) {
    place.console().show(Block.paragraph(greeting));
    try {
      new InteractiveShell(
              place.console(), commandLine, commands, failures, place.history(), prompt, whole)
          .run(new String[0]);
    } catch (Exception e) {
      failures.apply(e);
    }
  }

  private void execute(List<String> words) {
    ParsedInput parsed;
    try {
      parsed = commandLine.parse(place.choose(words));
    } catch (UsageException e) {
      failures.refused(e, words, commandLine.command(words));
      return;
    }
    try {
      new CommandExecutor(commands)
          .execute(
              new CommandContext(
                  parsed, commands, InteractiveShell.noWriter(), new InputReader() {}));
    } catch (CommandExecutionException e) {
      failures.apply(e);
    }
  }
}
