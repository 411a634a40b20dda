package yett.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.casebook.DataDirectory;
import yett.command.common.Mistakes;
import yett.console.Console;
import yett.console.Consoles;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.RuleBaseChoice;

/** What commands work with: a desk, and the console or streams that show its output. */
final class Workplace implements AutoCloseable {
  private final Map<String, String> environment;
  private final DataDirectory directory;
  private final StandardStreams output = StandardStreams.standard();
  private final Desk desk;
  private Console console;

  Workplace(Map<String, String> environment, Clock clock) {
    this.environment = environment;
    this.directory = DataDirectory.ofUser(environment);
    this.desk = new Desk(environment, clock, new ConsentAtConsole(this::console), output::tell);
  }

  public Desk desk() {
    return desk;
  }

  public synchronized Console console() {
    if (console == null) {
      if (Consoles.atTerminal()) {
        Consoles.nativeLibrary().share(directory.cache());
      }
      console = Consoles.choose(environment);
      if (Consoles.atTerminal()) {
        output.fold(console::width);
      }
    }
    return console;
  }

  /** The standard streams, for output that is not a screen. */
  public StandardStreams output() {
    return output;
  }

  /** The history file of typed commands. */
  Path history() {
    return directory.data().resolve("commands.history");
  }

  /** The file in which the program's own mistakes are noted. */
  public Mistakes mistakes() {
    return new Mistakes(directory.data());
  }

  /**
   * Applies the options that choose a rule base to this command line alone; returns the other
   * words.
   */
  public List<String> choose(List<String> typed) {
    List<String> words = new ArrayList<>();
    desk.choose(RuleBaseOptions.take(RuleBaseChoice.of(environment), typed, words));
    return words;
  }

  @Override
  public void close() {
    desk.close();
  }
}
