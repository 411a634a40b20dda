package yett.casebook;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.flywaydb.core.api.FlywayException;
import org.springframework.dao.DataAccessException;
import org.sqlite.util.LibraryLoaderUtil;
import yett.files.NativeLibrary;
import yett.files.OwnFiles;

/**
 * The store of cases and sites. What {@link #append} was given is on the disk when it returns, and
 * stays there as it was: events are only ever added. Only people's own words can be forgotten.
 *
 * <pre>{@code
 * try (var casebook = Casebook.open(DataDirectory.ofUser(System.getenv()).casebook())) {
 *   CaseId id = casebook.newCase("harrow-quay-3", now);
 *   casebook.append(id, 0, new NewEvent(now, "A. Moor", "answered", "{\"check\":\"chain-sag\"}"));
 * }
 * }</pre>
 *
 * <p>May be shared by threads, which then take turns; any number of programs may have the same
 * casebook open. Every method throws {@link CasebookException} when the database fails.
 */
public final class Casebook implements AutoCloseable {
  /** So many cases are read with one question to the database. */
  private static final int AT_ONCE = 500;

  private final String where;
  private final Address address;
  private final ServerPause away = new ServerPause();
  private Session session;

  private Casebook(String where, Address address, Session session) {
    this.where = where;
    this.address = address;
    this.session = session;
  }

  /**
   * The native part of the embedded database's driver; to be shared before a casebook is opened.
   */
  public static NativeLibrary nativeLibrary() {
    return new NativeLibrary(
        "org.sqlite.lib.path",
        LibraryLoaderUtil.getNativeLibResourcePath(),
        LibraryLoaderUtil.getNativeLibName());
  }

  /** Opens the casebook in a file, and makes the directory, the file and its tables if need be. */
  public static Casebook open(Path file) {
    String where = file.toString();
    try {
      OwnFiles.folder(file.toAbsolutePath().getParent());
      Path real = CasebookPlace.real(file);
      var address = new Address(SqliteFile.url(real));
      return new Casebook(
          where,
          address,
          SqliteFile.aloneWhileOpening(
              real,
              () -> {
                SqliteFile.begin(
                    real, next -> Session.open(where, new Address(next), true).close());
                return Session.open(where, address, true);
              }));
    } catch (IOException | SQLException | DataAccessException | FlywayException | LinkageError e) {
      throw Troubles.explained(where, e);
    }
  }

  /**
   * Opens the casebook a JDBC URL leads to, and makes its tables if there are none. The database
   * itself must exist, unless the URL names a file; but for a file {@link #open(Path)} is better,
   * because it also keeps two programs apart that both start on a new one.
   *
   * @throws CasebookUnreachable if a server does not answer
   */
  public static Casebook open(String jdbcUrl) {
    return open(jdbcUrl, false);
  }

  /** As {@link #open(String)}, and brings the tables of an older program up to date. */
  public static Casebook upgrade(String jdbcUrl) {
    return open(jdbcUrl, true);
  }

  private static Casebook open(String url, boolean upgrade) {
    var address = new Address(url);
    String where = address.shown();
    try {
      return new Casebook(where, address, Session.open(where, address, upgrade));
    } catch (SQLException | DataAccessException | FlywayException | LinkageError e) {
      throw Troubles.explained(address, e);
    }
  }

  /** The file or server, as messages call it: without a password. */
  public String where() {
    return where;
  }

  /** What tells this casebook from every other; not to be shown. */
  public String name() {
    return address.name();
  }

  /** {@link #name()} of the casebook that a JDBC URL leads to, whether it can be reached or not. */
  public static String nameAt(String jdbcUrl) {
    return new Address(jdbcUrl).name();
  }

  /**
   * Begins a case without events. Its site need not have been saved; under a name that a gate has
   * given up, and that no other has got, it is a case of that gate.
   */
  public CaseId newCase(String siteId, Instant at) {
    Storable.text("site", siteId);
    Storable.time("at", at);
    // Drawn once: if the server is lost on the way, the second try finds what the first began.
    String uid = UUID.randomUUID().toString();
    return write(s -> s.cases().begin(uid, s.renaming().now(siteId), at));
  }

  /**
   * Adds events to the end of a case, all or none.
   *
   * @param expectedSeq the number of the last event the writer knows, 0 for none
   * @return the events with their numbers
   * @throws CaseMovedOn if there are events after that one; nothing is added then
   */
  public List<StoredEvent> append(CaseId id, long expectedSeq, NewEvent... events) {
    return write(s -> s.cases().append(id, expectedSeq, List.of(events)));
  }

  /**
   * Changes what the list of cases shows of a case.
   *
   * @param lastSeq number of the last event that the line tells of; nothing happens if there are
   *     newer ones
   */
  public void summarise(CaseId id, long lastSeq, Summary summary) {
    write(
        s -> {
          s.cases().summarise(id, lastSeq, summary);
          return id;
        });
  }

  /** All events of a case, oldest first. */
  public List<StoredEvent> events(CaseId id) {
    return eventsAfter(id, 0);
  }

  /** The events of a case after the one with the given number, oldest first. */
  public List<StoredEvent> eventsAfter(CaseId id, long seq) {
    return read(s -> s.cases().eventsAfter(id, seq));
  }

  /**
   * All events of some cases, oldest first, with one question to the database. A case that cannot
   * be read is not among them.
   */
  public Map<CaseId, List<StoredEvent>> events(List<CaseId> ids) {
    return read(s -> s.events().of(ids));
  }

  /**
   * Gives each of these cases with its events, oldest first; they are read many at a time. A case
   * that cannot be read is passed over.
   */
  public void forEach(List<CaseSummary> lines, BiConsumer<CaseSummary, List<StoredEvent>> taker) {
    for (List<CaseSummary> some : portions(lines)) {
      Map<CaseId, List<StoredEvent>> events = events(ids(some));
      some.stream()
          .filter(line -> events.containsKey(line.id()))
          .forEach(line -> taker.accept(line, events.get(line.id())));
    }
  }

  private static <T> List<List<T>> portions(List<T> lines) {
    List<List<T>> portions = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += AT_ONCE) {
      portions.add(lines.subList(from, Math.min(lines.size(), from + AT_ONCE)));
    }
    return portions;
  }

  private static List<CaseId> ids(List<CaseSummary> lines) {
    return lines.stream().map(CaseSummary::id).toList();
  }

  /** All cases that can be read, the one last written to first. */
  public List<CaseSummary> cases() {
    return read(s -> s.cases().all());
  }

  /** The others. */
  public List<Unreadable> unreadable() {
    return read(s -> s.cases().rows()).stream()
        .filter(row -> !row.trouble().isEmpty())
        .map(row -> new Unreadable(row.id(), row.trouble()))
        .toList();
  }

  /** When the latest event of all happened, by the clock of whoever wrote it. */
  public Optional<Instant> latest() {
    return read(s -> s.cases().latest());
  }

  /** Looks at every case for what this program cannot have written; nothing is changed. */
  public List<Finding> verify() {
    return work(
        s ->
            s.snapshots()
                .run(
                    () -> {
                      List<Finding> findings = new ArrayList<>();
                      for (List<CaseRow> some : portions(s.audits().rows())) {
                        findings.addAll(s.audits().findings(some));
                      }
                      return List.copyOf(findings);
                    }));
  }

  /** A case as it stands in the tables, readable or not, as one line of JSON. */
  public String asItStands(String caseId) {
    return read(s -> s.audits().raw(caseId));
  }

  /**
   * Puts right what can be: the case has a number, times and events that can be read. How it stood
   * is kept.
   *
   * @param lost takes the place of an event that is gone; its time is that of the one before
   */
  public Repaired repair(String caseId, NewEvent lost, Instant now) {
    return write(s -> s.audits().repair(caseId, lost, now));
  }

  /** The cases in one state, the one last written to first. */
  public List<CaseSummary> cases(CaseStatus state) {
    return read(s -> s.cases().in(state));
  }

  /** The cases at a gate, whatever it was called since, the one last written to first. */
  public List<CaseSummary> casesAt(String gate) {
    return read(s -> s.cases().at(s.renaming().now(gate)));
  }

  /** The cases that are sought, the one last written to first. */
  public List<CaseSummary> search(CaseSearch search) {
    return read(
        s -> {
          var lines = s.cases().all().stream().filter(search::fits).toList();
          return search.text().map(text -> holding(s, lines, text)).orElse(lines);
        });
  }

  /** Here and not in SQL: databases differ in which letters are the same in capitals. */
  private static List<CaseSummary> holding(Session session, List<CaseSummary> lines, String text) {
    String sought = text.toLowerCase(Locale.ROOT);
    List<CaseSummary> holding = new ArrayList<>();
    for (List<CaseSummary> some : portions(lines)) {
      var events = session.events().of(ids(some));
      some.stream()
          .filter(
              line ->
                  holds(line.summary().title(), sought)
                      || events.getOrDefault(line.id(), List.of()).stream()
                          .anyMatch(e -> holds(e.body(), sought)))
          .forEach(holding::add);
    }
    return List.copyOf(holding);
  }

  private static boolean holds(String text, String sought) {
    return text.toLowerCase(Locale.ROOT).contains(sought);
  }

  /** One case's line in the list. */
  public CaseSummary summary(CaseId id) {
    return read(s -> s.cases().summary(id));
  }

  /**
   * The case somebody means: a whole id, its number ("7" for 2026-0007), or the beginning of it.
   *
   * @throws CaseNotFound if that is no case, with the nearest; or several, with all of them
   */
  public CaseId find(String typed) {
    var whole = CaseId.parse(typed.strip());
    return read(
        s ->
            whole.isPresent() && s.cases().exists(whole.get())
                ? whole.get()
                : CaseFinder.find(typed, s.cases().ids()));
  }

  /** Keeps a site's description as its newest revision; the older ones stay. */
  public void saveSite(SiteRecord site) {
    write(s -> s.sites().save(site));
  }

  /**
   * Gives a gate another name: its cases and all that is known of it go with it. The events of its
   * cases stay as they were written, with the name of then.
   *
   * @throws CasebookException if there is no such gate, or another one has the name
   */
  public void rename(String from, String to, Instant at) {
    Storable.text("site", to);
    write(s -> s.renaming().rename(from, to, at));
  }

  /**
   * Makes one gate of two that are the same: the first one's cases and all that is known of it go
   * to the second, and its name leads there. The events of its cases stay as they were written.
   *
   * @throws CasebookException if there is no such gate
   */
  public void merge(String from, String into, Instant at) {
    write(s -> s.renaming().merge(from, into, at));
  }

  /** The name of today of the gate that somebody calls so. */
  public String nameNow(String name) {
    return read(s -> s.renaming().now(name));
  }

  /** The names of today of the gates that were called so once, and are no more. */
  public List<String> formerly(String name) {
    return read(s -> s.sites().formerly(name));
  }

  /** A site's newest revision, if it was ever saved. */
  public Optional<SiteRecord> site(String id) {
    var history = siteHistory(id);
    return history.isEmpty() ? Optional.empty() : Optional.of(history.get(0));
  }

  /** All revisions of a site, newest first. */
  public List<SiteRecord> siteHistory(String id) {
    return read(s -> s.sites().history(id));
  }

  /** The newest revision of every site, by name. */
  public List<SiteRecord> sites() {
    return read(s -> s.sites().newest());
  }

  /** A case as it is carried to another casebook; what is known of people only if asked for. */
  public CarriedCase carry(CaseId id, boolean withPeople) {
    return write(s -> s.carrying().carry(id, withPeople));
  }

  /** A site with all its revisions, if it was ever saved. */
  public Optional<CarriedSite> carry(String siteId) {
    return site(siteId).map(site -> read(s -> s.carrying().carry(site.id())));
  }

  /** Takes in a case, or what is new in it; taken in again, it changes nothing. */
  public ImportedCase take(CarriedCase carried) {
    return write(s -> s.carrying().take(carried));
  }

  /** Takes in a case that went on here and elsewhere: elsewhere's course as a case of its own. */
  public ImportedCase takeApart(CarriedCase carried) {
    return take(carried.apart());
  }

  /**
   * Takes in what is new of a site.
   *
   * @return false if it was described anew here and elsewhere; then nothing was changed
   */
  public boolean take(CarriedSite site) {
    return write(s -> s.carrying().take(site));
  }

  /** Keeps what is known of somebody, in place of what was known of them in this case. */
  public void savePerson(CaseId id, Person person) {
    write(
        s -> {
          s.cases().summary(id);
          return s.people().save(id, person);
        });
  }

  /** What is known of the people of a case. */
  public List<Person> people(CaseId id) {
    return read(s -> s.people().of(id));
  }

  /** The cases in which somebody of this name or telephone number is known. */
  public List<CaseId> knowing(String nameOrPhone) {
    return read(s -> s.people().knowing(nameOrPhone));
  }

  /**
   * Forgets the people of a case; its events stay. How it stood before a repair is forgotten too.
   *
   * @return how many were forgotten
   */
  public int forgetPeople(CaseId id) {
    int forgotten =
        write(
            s -> {
              s.audits().forget(id);
              return s.people().forget(id);
            });
    wipe();
    return forgotten;
  }

  /**
   * Forgets somebody's own words: the events stay, with their numbers and times. An import that
   * still has the words does not bring them back.
   *
   * @param left what takes the place of each, by number
   */
  public void forgetWords(CaseId id, Map<Long, String> left) {
    write(
        s -> {
          s.cases().forget(id, left);
          s.audits().forget(id);
          return id;
        });
    wipe();
  }

  private void wipe() {
    work(
        s -> {
          s.wipe();
          return null;
        });
  }

  @Override
  public synchronized void close() {
    if (session != null) {
      session.close();
    }
    session = null;
  }

  private <T> T write(Function<Session, T> work) {
    return work(s -> s.transactions().run(() -> work.apply(s)));
  }

  private <T> T read(Function<Session, T> work) {
    try {
      return work(work::apply);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw Troubles.unreadable(where, e);
    }
  }

  /**
   * One at a time: there is one connection, and people type slowly. If it was lost since it was
   * last used, because the server was started anew, a new one takes its place; all work may be
   * begun again, because none of it is done twice.
   */
  private synchronized <T> T work(Work<T> work) {
    boolean used = session != null;
    try {
      return attempt(work);
    } catch (CasebookUnreachable e) {
      if (!used) {
        throw e;
      }
      return attempt(work);
    }
  }

  private <T> T attempt(Work<T> work) {
    try {
      if (session == null) {
        session = away.open(() -> Session.open(where, address, false));
      }
      return work.on(session);
    } catch (SQLException | DataAccessException | FlywayException e) {
      var told = explained(e);
      if (told instanceof CasebookUnreachable) {
        close();
      }
      throw told;
    }
  }

  private CasebookException explained(Exception e) {
    return address.isServer() ? Troubles.explained(address, e) : Troubles.explained(where, e);
  }

  private interface Work<T> {
    T on(Session session) throws SQLException;
  }
}
