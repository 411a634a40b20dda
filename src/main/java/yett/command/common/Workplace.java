package yett.command.common;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yett.casebook.DataDirectory;
import yett.console.Block;
import yett.console.Console;
import yett.console.Consoles;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.RuleBaseChoice;

/** What commands work with: a desk, and a person or a pipe before it. */
public final class Workplace implements AutoCloseable {
  private final Map<String, String> environment;
  private final DataDirectory directory;
  private final StandardStreams output = StandardStreams.standard();
  private final Desk desk;
  private Console console;

  public Workplace(Map<String, String> environment) {
    this.environment = environment;
    this.directory = DataDirectory.ofUser(environment);
    this.desk = new Desk(environment, new ConsentAtConsole(this::console), output::tell);
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
    }
    return console;
  }

  /** The standard streams, for what is no screen. */
  public StandardStreams output() {
    return output;
  }

  /** Where mistakes of the program are noted. */
  public Mistakes mistakes() {
    return new Mistakes(directory.data());
  }

  /**
   * Takes the options that choose a rule base, for this command line alone; returns the other
   * words.
   */
  public List<String> choose(List<String> typed) {
    List<String> words = new ArrayList<>();
    desk.choose(RuleBaseOptions.take(RuleBaseChoice.of(environment), typed, words));
    return words;
  }

  /** Says so if the casebook knows of a later time than it is by this computer. */
  public void tellClock() {
    desk.aheadOfClock()
        .ifPresent(
            latest ->
                console()
                    .show(
                        Block.paragraph(
                            apart(desk.clock().instant(), latest, ZoneId.systemDefault()))));
  }

  /** In the time of the person, who looks at a clock on the wall. */
  static String apart(Instant now, Instant latest, ZoneId zone) {
    DateTimeFormatter time =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm z", Locale.ENGLISH).withZone(zone);
    return "By the clock of this computer it is "
        + time.format(now)
        + ", but the casebook has an entry of "
        + time.format(latest)
        + ". One of the clocks is wrong; look at this one. What is entered stays in the order in"
        + " which it is entered.";
  }

  @Override
  public void close() {
    desk.close();
  }
}
