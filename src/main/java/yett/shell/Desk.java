package yett.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.CasebookException;
import yett.casebook.DataDirectory;
import yett.casebook.NativeDriver;
import yett.casebook.Outbox;
import yett.casebook.Parcel;
import yett.console.Block;
import yett.console.Console;
import yett.console.Consoles;
import yett.console.NativeTerminal;
import yett.console.Output;
import yett.files.OwnFiles;
import yett.interview.Expertise;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.practice.Notebook;

/** What commands work with; each thing is opened when it is first needed. */
final class Desk implements AutoCloseable {
  /** A settled choice: so far apart are clocks that nobody sets. */
  private static final Duration APART = Duration.ofMinutes(10);

  private final Map<String, String> environment;
  private final DataDirectory directory;
  private final Clock clock = Clock.systemUTC();
  private final Output output = Output.standard();
  private final RuleBases ruleBases;

  /** For the rule base, which is made ready while the casebook is opened. */
  private final Object knowing = new Object();

  private final Object showing = new Object();
  private Chosen chosen;
  private Console console;
  private boolean looked;
  private Casebook casebook;
  private RuleBase base;
  private Expertise expertise;
  private Expertise trial;

  Desk(Map<String, String> environment) {
    this.environment = environment;
    this.directory = DataDirectory.ofUser(environment);
    this.ruleBases = new RuleBases(directory, this::console);
    this.chosen = Chosen.of(environment);
  }

  Console console() {
    synchronized (showing) {
      if (console == null) {
        if (Consoles.atTerminal()) {
          NativeTerminal.share(directory.cache());
        }
        console = Consoles.choose(environment);
      }
      return console;
    }
  }

  /** Begins to make the program's own rule base ready, which nobody is asked about. */
  void prepare() {
    if (chosen.shipped()) {
      Thread ahead = new Thread(this::expertiseAhead, "rule base");
      ahead.setDaemon(true);
      ahead.start();
    }
  }

  private void expertiseAhead() {
    try {
      expertise();
    } catch (RuntimeException e) {
      // Whoever needs it meets the same and tells it.
    }
  }

  /** The standard streams, for what is no screen. */
  Output output() {
    return output;
  }

  synchronized Casebook casebook() {
    if (casebook == null) {
      NativeDriver.share(directory.cache());
      boolean mayWait = shared().isPresent();
      casebook = shared().map(Casebook::open).orElseGet(() -> openOwn());
      if (mayWait) {
        deliver();
      }
    }
    return casebook;
  }

  /** The address of the casebook that several share, if this desk is pointed to one. */
  Optional<String> shared() {
    return Optional.ofNullable(environment.get("YETT_CASEBOOK"))
        .map(String::strip)
        .filter(url -> !url.isEmpty());
  }

  /** The cards, for who only needs their words. */
  RuleBase base() {
    synchronized (knowing) {
      if (base == null) {
        base = chosen.shipped() ? ShippedKnowledge.ruleBase() : RuleBase.read(chosen.source());
      }
      return base;
    }
  }

  Expertise expertise() {
    synchronized (knowing) {
      if (expertise == null) {
        expertise = chosen.shipped() ? ruleBases.ready(base()) : ruleBases.openForPeople(base());
      }
      return expertise;
    }
  }

  /**
   * The rule base for trying and practising, when nobody stands at a gate: one that protects people
   * otherwise than the program's is looked at without more ado.
   */
  Expertise trial() {
    synchronized (knowing) {
      if (expertise != null || chosen.shipped()) {
        return expertise();
      }
      if (trial == null) {
        trial = ruleBases.open(base());
      }
      return trial;
    }
  }

  /** Takes the options that choose a rule base from a command line; returns the other words. */
  List<String> choose(List<String> typed) {
    List<String> words = new ArrayList<>();
    chosen = chosen.with(typed, words);
    return words;
  }

  /** Which rule base is worked with. */
  Chosen chosen() {
    return chosen;
  }

  /** Opens rule bases besides the one of the program. */
  RuleBases ruleBases() {
    return ruleBases;
  }

  /** What is kept of practice. */
  Notebook notebook() {
    return new Notebook(data());
  }

  /** Where mistakes of the program are noted. */
  Mistakes mistakes() {
    return new Mistakes(directory.data());
  }

  private Casebook openOwn() {
    data();
    return Casebook.open(directory.casebook());
  }

  /** The folder of what must not be lost. Whoever chose one that others can open is told, once. */
  private synchronized Path data() {
    if (!looked && OwnFiles.isOpen(directory.data())) {
      output.tell(
          directory.data()
              + ": others on this computer can open this folder, in which cases and what is known"
              + " of people are kept. Shut it with: chmod 700 "
              + directory.data());
    }
    looked = true;
    return directory.data();
  }

  Clock clock() {
    return clock;
  }

  /** Nothing is put in order by a clock, but somebody reads the times. */
  void tellClock() {
    Instant now = clock.instant();
    casebook()
        .latest()
        .filter(latest -> latest.isAfter(now.plus(APART)))
        .ifPresent(
            latest ->
                console()
                    .show(
                        Block.paragraph(
                            "By the clock of this computer it is "
                                + now.truncatedTo(ChronoUnit.SECONDS)
                                + ", but the casebook has an entry of "
                                + latest.truncatedTo(ChronoUnit.SECONDS)
                                + ". One of the clocks is wrong; look at this one. What is entered"
                                + " stays in the order in which it is entered.")));
  }

  OpenCase open(CaseId id, Role role) {
    Casebook casebook = casebook();
    return new OpenCase(
        casebook, id, expertise().newInterview(), role, clock, outbox(casebook).newParcel(id));
  }

  private Outbox outbox(Casebook casebook) {
    return new Outbox(data(), casebook.name());
  }

  /** Brings to the shared casebook what an earlier run could not; standard output stays clean. */
  private void deliver() {
    for (Parcel left : outbox(casebook).parcels()) {
      try (OpenCase open = open(left.caseId(), Role.TECHNICIAN)) {
        int entries = left.content().events().size();
        Recorded recorded = open.deliver(left);
        output.tell(delivered(open, entries, recorded));
      } catch (CasebookException | IllegalArgumentException e) {
        output.tell(
            "Case "
                + left.caseId()
                + ": what waits on this computer is not delivered. "
                + e.getMessage());
      }
    }
  }

  private static String delivered(OpenCase open, int entries, Recorded recorded) {
    return "Case "
        + open.id()
        + ": "
        + (entries == 1 ? "1 entry" : entries + " entries")
        + " that waited on this computer "
        + (open.waiting() > 0 ? "still cannot be delivered." : "delivered.")
        + (recorded.theirs().isEmpty()
            ? ""
            : " Somebody else had gone on with it meanwhile; what no longer fitted is kept as a"
                + " note. Look at it: resume "
                + open.id()
                + ".");
  }

  @Override
  public synchronized void close() {
    if (casebook != null) {
      casebook.close();
    }
  }
}
