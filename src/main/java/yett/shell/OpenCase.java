package yett.shell;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import yett.casebook.CaseId;
import yett.casebook.CaseMovedOn;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.casebook.StoredEvent;
import yett.casebook.Summary;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.knowledge.Role;

/** A case on the table: its interview, and its events, each of them stored before it counts. */
final class OpenCase implements AutoCloseable {
  private final Casebook casebook;
  private final CaseId id;
  private final Interview interview;
  private final Clock clock;
  private final Role role;
  private final List<Entry> entries = new ArrayList<>();
  private Moment moment;

  OpenCase(Casebook casebook, CaseId id, Interview interview, Role role, Clock clock) {
    this.casebook = casebook;
    this.id = id;
    this.interview = interview;
    this.role = role;
    this.clock = clock;
    entries.addAll(entries(casebook.events(id)));
    moment = interview.at(entries, role);
  }

  /** The events of a case as the interview reads them. */
  static List<Entry> entries(List<StoredEvent> stored) {
    return stored.stream()
        .map(
            e ->
                new Entry(
                    e.seq(),
                    e.at(),
                    Role.named(e.by().toUpperCase(Locale.ROOT)),
                    EventText.read(e.body())))
        .toList();
  }

  CaseId id() {
    return id;
  }

  Moment moment() {
    return moment;
  }

  Interview interview() {
    return interview;
  }

  /**
   * Stores events and goes on from there.
   *
   * @return false if somebody else had gone on with this case meanwhile: their answers are read in,
   *     and nothing was stored
   */
  boolean record(Event... events) {
    List<Entry> next = new ArrayList<>(entries);
    List<NewEvent> fresh = new ArrayList<>();
    for (Event event : events) {
      Entry entry = new Entry(next.size() + 1L, clock.instant(), role, event);
      next.add(entry);
      fresh.add(new NewEvent(entry.at(), role.word(), type(event), EventText.write(event)));
    }
    Moment then = interview.at(next, role);
    try {
      casebook.append(id, entries.size(), summary(then), fresh);
    } catch (CaseMovedOn e) {
      entries.addAll(entries(e.newer()));
      moment = interview.at(entries, role);
      return false;
    }
    entries.clear();
    entries.addAll(next);
    moment = then;
    return true;
  }

  private static String type(Event event) {
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
    String title =
        then.state().complaints().isEmpty()
            ? "begun"
            : leading.cause().name() + ", " + Figures.percent(leading.chance());
    if (closed) {
      title = then.state().closed().get().words() + ": " + title;
    }
    return new Summary(
        closed ? yett.casebook.CaseState.CLOSED : yett.casebook.CaseState.OPEN, title);
  }

  @Override
  public void close() {
    interview.close();
  }
}
