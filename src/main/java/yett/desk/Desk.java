package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import yett.bundle.FirmKeys;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.CasebookException;
import yett.casebook.CasebookUnreachable;
import yett.casebook.DataDirectory;
import yett.casebook.Outbox;
import yett.casebook.Parcel;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.files.WholeFile;
import yett.interview.course.Expertise;
import yett.knowledge.FirmSettings;
import yett.knowledge.KnowledgeException;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.knowledge.VanStock;
import yett.quantity.Units;

/**
 * The place where cases are worked on: gives access to the casebook, the rule base and the settings
 * kept next to them. Each is opened when it is first needed.
 */
public final class Desk implements AutoCloseable {
  /**
   * A settled choice: two clocks may differ by this much without a warning, because clocks that
   * nobody sets drift as much.
   */
  private static final Duration APART = Duration.ofMinutes(10);

  private final Map<String, String> environment;
  private final DataDirectory directory;
  private final Clock clock;
  private final Consumer<String> notices;
  private final RuleBases ruleBases;

  /** Lock for the rule base, which is prepared while the casebook is opened. */
  private final Object knowing = new Object();

  private RuleBaseChoice choice;
  private boolean looked;
  private Casebook casebook;

  /** The calls kept on this computer, while they are being worked on. */
  private HeldCalls away;

  private RuleBase base;
  private Expertise expertise;
  private Expertise trial;

  /**
   * @param environment settings: {@code YETT_HOME}, {@code YETT_CASEBOOK}, {@code YETT_KNOWLEDGE},
   *     {@code YETT_ADD_ONS}
   * @param clock gives the date of every visit
   * @param notices receives, a line each, what somebody should know but is not asked about
   */
  public Desk(
      Map<String, String> environment, Clock clock, Consent consent, Consumer<String> notices) {
    this.environment = environment;
    this.clock = clock;
    this.notices = notices;
    this.directory = DataDirectory.ofUser(environment);
    this.ruleBases = new RuleBases(directory, consent);
    this.choice = RuleBaseChoice.of(environment);
  }

  /** Starts preparing the program's own rule base in the background; it needs no consent. */
  public void prepare() {
    if (choice.shipped()) {
      Thread ahead = new Thread(this::expertiseAhead, "rule base");
      ahead.setDaemon(true);
      ahead.start();
    }
  }

  private void expertiseAhead() {
    try {
      expertise();
    } catch (RuntimeException e) {
      // Whoever needs the rule base meets the same failure and reports it.
    }
  }

  public synchronized Casebook casebook() {
    if (away != null) {
      return away.casebook();
    }
    if (casebook == null) {
      Casebook.nativeLibrary().share(directory.cache());
      boolean mayWait = shared().isPresent();
      casebook = shared().map(Casebook::open).orElseGet(() -> openOwn());
      if (mayWait) {
        deliver();
      }
    }
    return casebook;
  }

  /** The address of the shared casebook, if this desk is set to use one. */
  public Optional<String> shared() {
    return Optional.ofNullable(environment.get("YETT_CASEBOOK"))
        .map(String::strip)
        .filter(url -> !url.isEmpty());
  }

  /**
   * Leads a call. While the server of the shared casebook is away, the call is kept on this
   * computer. It is delivered when it is over, or later as soon as the server answers.
   */
  public void lead(Runnable call) {
    withoutServer().ifPresentOrElse(calls -> lead(call, calls), call);
  }

  /** Works on calls; on those that wait on this computer if the server is away. */
  public void tend(Runnable work) {
    withoutServer()
        .filter(CallsAway::isAny)
        .ifPresentOrElse(
            calls -> {
              notices.accept(
                  "The server does not answer: only calls that wait on this computer can be seen and"
                      + " changed now.");
              tend(work, calls);
            },
            work);
  }

  /** Whether entries are now kept on this computer because the server is away. */
  public synchronized boolean isAway() {
    return away != null;
  }

  private void lead(Runnable call, CallsAway calls) {
    notices.accept(
        "The server does not answer: this call is kept on this computer. It goes to the server by"
            + " itself as soon as that answers, and gets its number there. What is known of the"
            + " gate, and other calls, cannot be seen now.");
    tend(call, calls);
    try {
      casebook().latest();
      deliverCalls();
    } catch (CasebookUnreachable e) {
      notices.accept(
          "The server still does not answer. The call waits on this computer; the next command that"
              + " reaches the server delivers it.");
    }
  }

  private void tend(Runnable work, CallsAway calls) {
    try (HeldCalls held = calls.open()) {
      away = held;
      work.run();
    } finally {
      away = null;
    }
  }

  /** The store for calls, if there is a shared casebook and its server is away. */
  private Optional<CallsAway> withoutServer() {
    if (shared().isEmpty() || isAway()) {
      return Optional.empty();
    }
    try {
      casebook().latest();
      return Optional.empty();
    } catch (CasebookUnreachable e) {
      return Optional.of(callsAway());
    }
  }

  private CallsAway callsAway() {
    return new CallsAway(data(), Casebook.nameAt(shared().orElseThrow()));
  }

  private void deliverCalls() {
    try {
      callsAway().deliver(casebook, notices);
    } catch (CasebookException e) {
      notices.accept("Calls that wait on this computer are not delivered. " + e.getMessage());
    }
  }

  /** The cards, for code that needs only their words. */
  public RuleBase base() {
    synchronized (knowing) {
      if (base == null) {
        RuleBase cards = cards();
        base = cards.usually(usualGate(cards)).in(units());
      }
      return base;
    }
  }

  private RuleBase cards() {
    return firmAtWork()
        .in(choice.shipped() ? ShippedKnowledge.ruleBase() : RuleBase.read(choice.source()));
  }

  /**
   * The answers to site questions that are assumed on this computer until somebody gives others.
   * Where this computer has none, the cards decide.
   */
  public Map<String, String> usualGate() {
    return usualGate(base());
  }

  private Map<String, String> usualGate(RuleBase cards) {
    return new UsualGate(directory.settings()).answers(cards);
  }

  /**
   * Sets the answers to site questions that are assumed from now on. For all other questions the
   * cards decide again.
   *
   * @throws UncheckedIOException if the answers cannot be stored
   */
  public void takeAsUsual(Map<String, String> answers) {
    keep(new UsualGate(directory.settings()).file(), UsualGate.lines(answers));
    forget();
  }

  /** The rule base with the firm's settings on this computer applied. */
  public RuleBase asTheFirmSays(RuleBase cards) {
    return firmAtWork().in(cards);
  }

  /**
   * A rule base ready for cases, with the firm's settings applied, as people will meet it at the
   * gate.
   */
  public Expertise tried(KnowledgeSource source) {
    return ruleBases.open(asTheFirmSays(RuleBase.read(source)));
  }

  /** The units in which readings are shown here; SI units until somebody chooses others. */
  public Units units() {
    return setting(unitsFile()).flatMap(Units::named).orElse(Units.SI);
  }

  /** Sets the units in which everything is shown from now on. */
  public void workIn(Units units) {
    keep(unitsFile(), units.word());
    forget();
  }

  private void forget() {
    synchronized (knowing) {
      base = null;
      expertise = null;
      trial = null;
    }
  }

  private Path unitsFile() {
    return directory.settings().resolve("units.txt");
  }

  /** The firm's settings, and its letterhead. */
  public FirmSettings firm() {
    return new FirmFile(directory.settings()).read();
  }

  /** The firm's settings for work at a gate; an error in its letterhead shows when it prints. */
  public FirmSettings firmAtWork() {
    return new FirmFile(directory.settings()).forWork();
  }

  /** The firm's own key, and the keys of the firms whose rule bases are used here. */
  public FirmKeys keys() {
    return new FirmKeys(directory.settings());
  }

  /**
   * The stock of the van, if there is a list. Parts in it that no card names are reported. An
   * unreadable list is also only reported, because somebody is waiting for the dispatch sheet,
   * which works without it.
   */
  public Optional<VanStock> van() {
    Optional<VanStock> van;
    try {
      van = new FirmFile(directory.settings()).van();
    } catch (KnowledgeException e) {
      e.problems().forEach(problem -> notices.accept(problem.toString()));
      return withoutVan();
    } catch (UncheckedIOException e) {
      notices.accept(e.getMessage());
      return withoutVan();
    }
    Set<String> known = base().parts().keySet();
    van.map(v -> v.unknownTo(base()))
        .ifPresent(
            unknown ->
                unknown.forEach(
                    part ->
                        notices.accept(
                            "van.yaml: no repair takes \""
                                + part
                                + "\". "
                                + Names.advice(part, known))));
    return van;
  }

  private Optional<VanStock> withoutVan() {
    notices.accept("So the sheet does not say what is on the van.");
    return Optional.empty();
  }

  /** The name of the agent at this computer, if it was entered. */
  public Optional<String> agent() {
    return setting(agentFile());
  }

  private static Optional<String> setting(Path file) {
    try {
      return Files.exists(file)
          ? Optional.of(BoundedFile.text(file, 1 << 10).strip()).filter(n -> !n.isEmpty())
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty(); // it will be asked for again
    }
  }

  /** Stores the name of the agent at this computer. */
  public void callAgent(String name) {
    keep(agentFile(), name);
  }

  private void keep(Path file, String setting) {
    try {
      OwnFiles.folder(directory.settings());
      WholeFile.replaceOwn(file, setting.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot keep it in " + file, e);
    }
  }

  private Path agentFile() {
    return directory.settings().resolve("agent.txt");
  }

  /** The firm's logo, if it has one: the bytes of a picture. */
  public Optional<byte[]> logo() {
    return new FirmFile(directory.settings()).logo();
  }

  public Expertise expertise() {
    synchronized (knowing) {
      if (expertise == null) {
        expertise = choice.shipped() ? ruleBases.ready(base()) : ruleBases.openForPeople(base());
      }
      return expertise;
    }
  }

  /**
   * The rule base for trying and practising, when nobody is at a gate. One that lacks safeguards of
   * the program is used without asking.
   */
  public Expertise trial() {
    synchronized (knowing) {
      boolean asItIs = usualGate().isEmpty(); // test cases assume the cards' usual gate
      if (asItIs && (expertise != null || choice.shipped())) {
        return expertise();
      }
      if (trial == null) {
        trial = ruleBases.open(asItIs ? base() : cards().in(units()));
      }
      return trial;
    }
  }

  /** Which rule base is in use. */
  public RuleBaseChoice choice() {
    return choice;
  }

  /** Sets another rule base for whatever is opened from now on. */
  public void choose(RuleBaseChoice other) {
    synchronized (knowing) {
      if (!other.equals(choice)) {
        choice = other;
        base = null;
        expertise = null;
        trial = null;
      }
    }
  }

  /** Opens rule bases other than the program's own. */
  public RuleBases ruleBases() {
    return ruleBases;
  }

  private Casebook openOwn() {
    data();
    return Casebook.open(directory.casebook());
  }

  /** The directory for data that must not be lost. If others can read it, a notice says so once. */
  public synchronized Path data() {
    if (!looked && OwnFiles.isOpen(directory.data())) {
      notices.accept(
          directory.data()
              + ": others on this computer can open this folder, in which cases and what is known"
              + " of people are kept. Shut it with: chmod 700 "
              + directory.data());
    }
    looked = true;
    return directory.data();
  }

  public Clock clock() {
    return clock;
  }

  /**
   * The time of the latest event, if it is later than this computer's clock. Nothing is ordered by
   * the clock, but people read the times.
   */
  public Optional<Instant> aheadOfClock() {
    Instant now = clock.instant();
    return casebook().latest().filter(latest -> latest.isAfter(now.plus(APART)));
  }

  public OpenCase open(CaseId id, Role role) {
    return open(id, Optional.of(role));
  }

  /** Opens a case. Without a role, the role that answered last is used. */
  public OpenCase open(CaseId id, Optional<Role> role) {
    Casebook casebook = casebook();
    return new OpenCase(
        casebook, id, expertise().newInterview(), role, clock, outbox(casebook).newParcel(id));
  }

  private Outbox outbox(Casebook casebook) {
    return new Outbox(data(), casebook.name());
  }

  /**
   * Delivers to the shared casebook what an earlier run could not. Writes nothing to standard
   * output.
   */
  private void deliver() {
    deliverCalls();
    for (Parcel left : outbox(casebook).parcels()) {
      try (OpenCase open = open(left.caseId(), Role.TECHNICIAN)) {
        int entries = left.content().events().size();
        EntryOutcome recorded = open.deliver(left);
        notices.accept(delivered(open, entries, recorded) + unreadable(left));
      } catch (CasebookException | IllegalArgumentException e) {
        notices.accept(
            "Case "
                + left.caseId()
                + ": what waits on this computer is not delivered. "
                + e.getMessage());
      }
    }
  }

  private static String unreadable(Parcel left) {
    return left.aside()
        .map(
            file ->
                " What follows cannot be read and is kept in "
                    + file
                    + ". Ask whoever answered, and enter it again.")
        .orElse("");
  }

  private static String delivered(OpenCase open, int entries, EntryOutcome recorded) {
    return "Case "
        + open.id()
        + ": "
        + (entries == 1 ? "1 entry" : entries + " entries")
        + " that waited on this computer "
        + (open.waiting() > 0 ? "still cannot be delivered." : "delivered.")
        + (recorded.theirs().isEmpty()
            ? ""
            : " Somebody else had worked on it in the meantime; what no longer fitted is kept as a"
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
