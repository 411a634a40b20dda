package yett.desk;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.casebook.CaseId;
import yett.casebook.CaseMovedOn;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.CasebookException;
import yett.casebook.CasebookUnreachable;
import yett.casebook.NewEvent;
import yett.casebook.Parcel;
import yett.casebook.Person;
import yett.casebook.SiteRecord;
import yett.casebook.StoredEvent;
import yett.casebook.Summary;
import yett.interview.course.Interview;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.inspection.Inspection;
import yett.interview.intake.Meanwhile;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.wording.Figures;
import yett.wording.NoteWords;

/**
 * A case that is being worked on: its interview and its events. Every event is written to disk
 * before the interview uses it; while the server of a shared casebook is away, to the disk of this
 * computer.
 */
public final class OpenCase implements AutoCloseable {
  /** Chance above which a cause is more likely than not. */
  private static final double LIKELY = 0.5;

  private final Casebook casebook;
  private final CaseId id;
  private final Interview interview;
  private final Clock clock;
  private final Role role;
  private final Parcel parcel;
  private final String gate;
  private final List<Entry> entries = new ArrayList<>();

  /** How many of the entries are in the casebook; the others wait in the parcel. */
  private int stored;

  /** Whether the person has been told that the server cannot be reached. */
  private boolean away;

  private Moment moment;

  /** What this case had said about its gate when that was last stored. */
  private ToldOfGate told;

  /**
   * @param role who answers; empty for the role that answered last
   */
  public OpenCase(
      Casebook casebook,
      CaseId id,
      Interview interview,
      Optional<Role> role,
      Clock clock,
      Parcel parcel) {
    this.casebook = casebook;
    this.id = id;
    this.interview = interview;
    this.clock = clock;
    this.parcel = parcel;
    this.gate = casebook.summary(id).siteId();
    holdStored(entries(casebook.events(id)));
    this.role = role.orElseGet(this::last);
    think();
    told = ToldOfGate.of(moment, interview.expertise().base());
  }

  /** The events of a case as the interview reads them; see {@link StoredEntries}. */
  public static List<Entry> entries(List<StoredEvent> stored) {
    return StoredEntries.readable(stored);
  }

  private Role last() {
    return entries.stream()
        .filter(e -> !(e.event() instanceof Event.Unread))
        .map(Entry::by)
        .reduce((a, b) -> b)
        .orElse(Role.TECHNICIAN);
  }

  public CaseId id() {
    return id;
  }

  /** The present name of the gate, even if it had another one when the case was opened. */
  public String gate() {
    return gate;
  }

  /** The names of all known gates, this one among them; of this one alone without the casebook. */
  public List<String> gates() {
    try {
      return Stream.concat(Stream.of(gate), casebook.sites().stream().map(SiteRecord::id))
          .distinct()
          .toList();
    } catch (CasebookException e) {
      return List.of(gate);
    }
  }

  /** The time by this desk's clock. */
  public Instant now() {
    return clock.instant();
  }

  /** Who called, the first caller first, as far as it is known and the casebook can be reached. */
  public List<Person> callers() {
    try {
      return casebook.people(id).stream().filter(p -> p.part().called()).toList();
    } catch (CasebookException e) {
      return List.of();
    }
  }

  /** Other open cases of the same caller, found by the telephone number or else by the name. */
  public List<CaseSummary> openCasesOfCaller() {
    try {
      return callers().stream()
          .findFirst()
          .map(
              c -> {
                List<CaseSummary> byPhone = openKnowing(c.phone());
                return byPhone.isEmpty() ? openKnowing(c.name()) : byPhone;
              })
          .orElse(List.of());
    } catch (CasebookException e) {
      return List.of(); // the server is away, so other cases cannot be read
    }
  }

  private List<CaseSummary> openKnowing(String nameOrPhone) {
    return nameOrPhone.isBlank()
        ? List.of()
        : casebook.knowing(nameOrPhone).stream()
            .filter(other -> !other.equals(id))
            .map(casebook::summary)
            .filter(c -> c.summary().state() == CaseStatus.OPEN)
            .toList();
  }

  /** The other cases at this gate, the newest first; none while the server is away. */
  public List<CaseSummary> othersAtGate() {
    try {
      return casebook.casesAt(gate).stream().filter(c -> !c.id().equals(id)).toList();
    } catch (CasebookException e) {
      return List.of();
    }
  }

  /** The events of another case. */
  public List<Entry> entriesOf(CaseId other) {
    return entries(casebook.events(other));
  }

  /** Stores who called. */
  public void keepCaller(Person person) {
    casebook.savePerson(id, person);
  }

  /** The role that answers. */
  public Role role() {
    return role;
  }

  public Moment moment() {
    return moment;
  }

  public Interview interview() {
    return interview;
  }

  /** How many answers wait on this computer for the server. */
  public int waiting() {
    return entries.size() - stored;
  }

  /** Stores events, all with the same time, and updates the interview. */
  public EntryOutcome record(Event... events) {
    Instant now = clock.instant();
    List<Entry> fresh = new ArrayList<>();
    for (Event event : events) {
      fresh.add(new Entry(entries.size() + fresh.size() + 1L, now, role, event));
    }
    return update(send(fresh));
  }

  /** Tries to bring the waiting answers to the server. */
  public EntryOutcome deliver() {
    return waiting() == 0 ? EntryOutcome.stored(0) : update(send(List.of()));
  }

  /** Updates the interview with what is stored, then the line in the list of cases. */
  private EntryOutcome update(EntryOutcome recorded) {
    think();
    nameIt();
    rememberGate();
    return recorded;
  }

  /** Stores what was said about the gate for its next case, however this one ends. */
  private void rememberGate() {
    ToldOfGate now = ToldOfGate.of(moment, interview.expertise().base());
    if (waiting() > 0 || now.equals(told) || moment.state().opened().isEmpty()) {
      return;
    }
    try {
      if (new GateMemory(casebook, clock)
          .keep(casebook.summary(id).siteId(), now.site(), now.batteries())) {
        told = now;
      }
    } catch (CasebookException e) {
      // As with the line in the list: the answers are stored, and the next one tries again.
    }
  }

  /** Brings to the server what waits in a parcel that another run of the program left. */
  public EntryOutcome deliver(Parcel left) {
    List<Entry> mine = new ArrayList<>();
    Parcel.Content content = left.content();
    for (NewEvent e : content.events()) {
      mine.add(
          StoredEntries.entry(
              new StoredEvent(
                  content.after() + mine.size() + 1, e.at(), e.by(), e.type(), e.body())));
    }
    EntryOutcome recorded =
        mine.isEmpty()
            ? EntryOutcome.stored(0)
            : appendAfterOthers(Math.toIntExact(content.after()), mine);
    left.setAside();
    left.delivered(); // what can be read of it is stored, or waits in our own parcel
    return update(recorded);
  }

  private EntryOutcome send(List<Entry> fresh) {
    List<Entry> next = new ArrayList<>(entries);
    next.addAll(fresh);
    List<Entry> unsent = next.subList(stored, next.size());
    int waited = waiting();
    if (unsent.isEmpty()) {
      parcel.delivered();
      return EntryOutcome.stored(0);
    }
    try {
      casebook.append(id, stored, texts(unsent).toArray(NewEvent[]::new));
    } catch (CasebookUnreachable e) {
      if (!fresh.isEmpty()) {
        parcel.add(stored, texts(fresh));
      }
      hold(next);
      boolean news = !away;
      away = true;
      return EntryOutcome.kept(waiting(), Optional.of(e.getMessage()).filter(m -> news));
    } catch (CaseMovedOn e) {
      int known = stored;
      List<Entry> now = new ArrayList<>(entries.subList(0, stored));
      now.addAll(entries(e.newer()));
      holdStored(now);
      return appendAfterOthers(known, unsent);
    }
    holdStored(next);
    parcel.delivered();
    boolean wasAway = away;
    away = false;
    return EntryOutcome.stored(wasAway ? waited : 0);
  }

  /**
   * Appends entries that were made without knowledge of the newest events, as far as they still fit
   * after those. When this begins, all of {@code entries} is in the casebook.
   *
   * @param known how many of the events were known
   */
  private EntryOutcome appendAfterOthers(int known, List<Entry> mine) {
    var together =
        Meanwhile.of(
            interview.expertise().base(),
            e -> e.accept(new NoteWords(interview.expertise().base())),
            entries,
            known,
            mine);
    List<Entry> next = new ArrayList<>(entries);
    next.addAll(together.added());
    if (!together.added().isEmpty()) {
      parcel.replace(stored, texts(together.added()));
    }
    hold(next);
    EntryOutcome sent = send(List.of());
    return sent.beside(together);
  }

  private void holdStored(List<Entry> all) {
    hold(all);
    stored = entries.size();
  }

  private void hold(List<Entry> all) {
    List<Entry> copy = List.copyOf(all);
    entries.clear();
    entries.addAll(copy);
  }

  private void think() {
    moment = interview.asFarAsPossible(entries, role);
  }

  /**
   * Updates the line of this case in the list of cases. If that fails, the next answer tries again.
   */
  public void nameIt() {
    if (waiting() > 0) {
      return;
    }
    try {
      casebook.summarise(id, stored, summary(moment));
    } catch (CasebookException e) {
      // The answers are stored, which is what matters; a missing server is noticed soon enough.
    }
  }

  private static List<NewEvent> texts(List<Entry> entries) {
    return entries.stream()
        .map(e -> new NewEvent(e.at(), e.by().word(), type(e.event()), EventText.write(e.event())))
        .toList();
  }

  public static String type(Event event) {
    if (event instanceof Event.Unread unread) {
      return unread.kind();
    }
    return event
        .getClass()
        .getSimpleName()
        .replaceAll("(?<=[a-z])(?=[A-Z])", "-")
        .toLowerCase(Locale.ROOT);
  }

  private Summary summary(Moment then) {
    boolean closed = then.state().closed().isPresent();
    var leading =
        Interview.ranking(then, interview.expertise().base()).stream()
            .max(Comparator.comparingDouble(Interview.RankedCause::chance))
            .orElseThrow();
    Optional<Inspection> inspection = Inspection.of(interview.expertise().base(), then);
    if (inspection.isPresent()) {
      return inspected(then, inspection.get());
    }
    Optional<List<String>> complaints = then.state().told().complaints();
    boolean untold =
        complaints.isEmpty()
            || leading.chance() < LIKELY
                && (complaints.get().isEmpty() || !then.judgement().stops().isEmpty());
    String title = untold ? titleByDanger(then) : found(then, leading);
    if (closed) {
      title = then.state().closed().get().words() + ": " + title;
    }
    return new Summary(
        closed ? CaseStatus.CLOSED : CaseStatus.OPEN, title, untold ? "" : leading.cause().id());
  }

  /**
   * Names all causes that are more likely than not, causes before their consequences. If there are
   * none, names the most likely cause.
   */
  private String found(Moment then, Interview.RankedCause leading) {
    List<Interview.RankedCause> likely =
        Interview.ranking(then, interview.expertise().base()).stream()
            .filter(r -> r.chance() > LIKELY)
            .toList();
    return (likely.isEmpty() ? List.of(leading) : likely)
        .stream()
            .map(r -> r.cause().name() + ", " + Figures.percent(r.chance()))
            .collect(Collectors.joining("; "));
  }

  private static Summary inspected(Moment then, Inspection inspection) {
    Optional<Ending> closed = then.state().closed();
    String name = "inspection for " + inspection.kind().word() + ", ";
    return new Summary(
        closed.isPresent() ? CaseStatus.CLOSED : CaseStatus.OPEN,
        closed
            .map(e -> e.words() + ": " + name + inspection.sum())
            .orElse(name + inspection.progress()),
        "");
  }

  /** Names the danger if it ended the case before anything else was clear. */
  private String titleByDanger(Moment then) {
    return then.judgement().stops().stream()
        .map(s -> interview.expertise().base().stops().get(s.stop()).name())
        .distinct()
        .reduce((a, b) -> a + "; " + b)
        .orElse(
            then.state().told().complaints().isPresent()
                ? "nobody could tell what is wrong"
                : "begun");
  }

  @Override
  public void close() {
    interview.close();
  }
}
