package yett.command.diagnose;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.Outbox;
import yett.command.call.Calling;
import yett.command.diagnose.conversation.Conversation;
import yett.command.diagnose.look.LookList;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.desk.OpenCase;
import yett.interview.course.Expertise;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;

/** A case in a casebook of its own, and somebody who types lines at it until none is left. */
public final class TypedCase implements AutoCloseable {
  private static final Map<String, List<NewEvent>> BEGUN = new ConcurrentHashMap<>();
  private static byte[] template;

  private final Expertise expertise;
  private final Role role;
  private final Path folder;
  private final Casebook casebook;
  private CaseId id;
  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();

  public TypedCase(Path folder, Expertise expertise, Role role) {
    this.expertise = expertise;
    this.role = role;
    this.folder = folder;
    this.casebook = Casebook.open(laidOut(folder));
    another();
  }

  /** Goes on with a new case at the same gate. */
  public void another() {
    id = casebook.newCase("Fish dock", Instant.parse("2026-11-25T09:30:00Z"));
    try (OpenCase open = open()) {
      open.record(new Event.Opened("Fish dock", role, "f"));
    }
  }

  /** Goes on with an inspection of the same gate. */
  public void inspection() {
    id = casebook.newCase("Fish dock", Instant.parse("2026-11-25T09:30:00Z"));
    try (OpenCase open = open()) {
      open.record(
          new Event.Opened("Fish dock", role, "f", Optional.of(InspectionKind.SERVICE), List.of()));
    }
  }

  /** A new casebook in a folder: a copy, because to lay out its tables takes longer than a test. */
  private static synchronized Path laidOut(Path folder) {
    Path file = folder.resolve("casebook.db");
    try {
      if (template == null) {
        Path first = Files.createTempDirectory("typed-case").resolve("casebook.db");
        Casebook.open(first).close();
        template = Files.readAllBytes(first);
      }
      Files.createDirectories(folder);
      Files.write(file, template);
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public OpenCase open() {
    return open(role);
  }

  /** The same, opened by somebody else. */
  public OpenCase open(Role by) {
    return new OpenCase(
        casebook,
        id,
        expertise.newInterview(),
        Optional.of(by),
        Clock.tickMillis(ZoneOffset.UTC),
        new Outbox(folder, casebook.name()).newParcel(id));
  }

  /** A sitting at which these lines are typed; it ends, saved, where they end. */
  public void type(String... lines) {
    type(Map.of(), lines);
  }

  public void type(Map<String, String> knownSite, String... lines) {
    try (OpenCase open = open()) {
      new Conversation(console(lines), open, knownSite, Calling::new).run();
    }
  }

  /** A conversation about the case as somebody has opened it, at which these lines are typed. */
  public Conversation conversation(OpenCase open, String... lines) {
    return new Conversation(console(lines), open, Map.of(), Calling::new);
  }

  /** Another call about the same case, at which these lines are typed. */
  public void ringsAgain(String... lines) {
    try (OpenCase open = open()) {
      open.record(new Event.DangersAgain());
      new Conversation(console(lines), open, Map.of(), Calling::new)
          .ringsAgain(false, List.of())
          .run();
    }
  }

  /**
   * The same at the beginning of a case, typed once for all tests: what was stored then is stored
   * again. It leaves nothing on the screen.
   */
  public void begin(String... lines) {
    String key = System.identityHashCode(expertise) + " " + role + " " + List.of(lines);
    List<NewEvent> known = BEGUN.get(key);
    if (known != null) {
      casebook.append(id, 1, known.toArray(NewEvent[]::new));
      return;
    }
    type(lines);
    screen.reset();
    BEGUN.put(
        key,
        casebook.eventsAfter(id, 1).stream()
            .map(e -> new NewEvent(e.at(), e.by(), e.type(), e.body()))
            .toList());
  }

  /** These lines are typed at it; what it says is on the screen. */
  public Sitting sitting(OpenCase open, String... lines) {
    return new Sitting(console(lines), open);
  }

  /** A round of these looks, at the place of the first, at which the lines are typed. */
  public void round(List<Check> looks, String... lines) {
    try (OpenCase open = open()) {
      List<Step.Ask> asks =
          looks.stream()
              .map(
                  look ->
                      new Step.Ask(
                          look,
                          List.of(),
                          Optional.empty(),
                          Optional.empty(),
                          Occasion.of(Occasion.Kind.WORTH)))
              .toList();
      Sitting sitting = sitting(open, lines);
      new LookList(sitting, new PromptRequests(sitting))
          .ask(new Step.LookRound(looks.get(0).place().orElseThrow(), asks, List.of(), List.of()));
    }
  }

  private PlainConsole console(String... lines) {
    String typed = String.join("\n", lines) + "\n";
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    return new PlainConsole(
        new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
        out,
        out,
        new Layout(100, false, true),
        true);
  }

  /** What was shown so far, with every run of white space as one blank. */
  public String screen() {
    return screen.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
  }

  /** What is stored behind the opening. */
  public List<Event> stored() {
    return OpenCase.entries(casebook.events(id)).stream().skip(1).map(Entry::event).toList();
  }

  public Casebook casebook() {
    return casebook;
  }

  public CaseId id() {
    return id;
  }

  @Override
  public void close() {
    casebook.close();
  }
}
