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
 * The store of cases and sites. When {@link #append} returns, the events are on disk and never
 * change: events are only ever added. Only people's own words can be deleted.
 *
 * <pre>{@code
 * try (var casebook = Casebook.open(DataDirectory.ofUser(System.getenv()).casebook())) {
 *   CaseId id = casebook.newCase("harrow-quay-3", now);
 *   casebook.append(id, 0, new NewEvent(now, "A. Moor", "answered", "{\"check\":\"chain-sag\"}"));
 * }
 * }</pre>
 *
 * <p>May be shared by threads, which then take turns. Any number of programs may have the same
 * casebook open. Every method throws {@link CasebookException} if the database fails.
 */
public final class Casebook implements AutoCloseable {
  /** How many cases are read with one query. */
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
   * The native part of the embedded database's driver. Call {@code share} on it before a casebook
   * is opened.
   */
  public static NativeLibrary nativeLibrary() {
    return new NativeLibrary(
        "org.sqlite.lib.path",
        LibraryLoaderUtil.getNativeLibResourcePath(),
        LibraryLoaderUtil.getNativeLibName());
  }

  /**
   * Opens the casebook in a file. Makes the directory, the file and its tables if they do not
   * exist.
   */
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
   * Opens the casebook at a JDBC URL, and makes its tables if there are none. The database itself
   * must exist, unless the URL names a file. For a file {@link #open(Path)} is better, because it
   * also keeps two programs apart that both start on a new one.
   *
   * @throws CasebookUnreachable if a server does not answer
   */
  public static Casebook open(String jdbcUrl) {
    return open(jdbcUrl, false);
  }

  /** As {@link #open(String)}, but also upgrades the tables of an older program. */
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

  /** The file or server, as shown in messages: without a password. */
  public String where() {
    return where;
  }

  /** A name that tells this casebook from every other; it must not be shown. */
  public String name() {
    return address.name();
  }

  /** {@link #name()} of the casebook at a JDBC URL, whether it can be reached or not. */
  public static String nameAt(String jdbcUrl) {
    return new Address(jdbcUrl).name();
  }

  /**
   * Begins a case without events. Its site need not have been saved. If a gate had this name before
   * and no other gate has it now, the case belongs to that gate.
   */
  public CaseId newCase(String siteId, Instant at) {
    Storable.text("site", siteId);
    Storable.time("at", at);
    // Chosen once: if the server is lost on the way, the second attempt finds the case that the
    // first one began.
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
   * @param lastSeq number of the last event that the summary takes into account; nothing happens if
   *     there are newer ones
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
   * All events of several cases, oldest first, with one query. Cases that cannot be read are left
   * out.
   */
  public Map<CaseId, List<StoredEvent>> events(List<CaseId> ids) {
    return read(s -> s.events().of(ids));
  }

  /**
   * Passes each of these cases with its events, oldest first, to a consumer. Many cases are read at
   * a time; those that cannot be read are skipped.
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

  /** The cases whose line in the list cannot be read. */
  public List<Unreadable> unreadable() {
    return read(s -> s.cases().rows()).stream()
        .filter(row -> !row.trouble().isEmpty())
        .map(row -> new Unreadable(row.id(), row.trouble()))
        .toList();
  }

  /** Time of the latest event of all, by its writer's clock. */
  public Optional<Instant> latest() {
    return read(s -> s.cases().latest());
  }

  /** Searches all cases for anything that this program cannot have written. Nothing is changed. */
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

  /** A case as it is stored, readable or not, as one line of JSON. */
  public String asItStands(String caseId) {
    return read(s -> s.audits().raw(caseId));
  }

  /**
   * Repairs a case as far as possible: afterwards it has a number, times and events that can be
   * read. Its state before is kept.
   *
   * @param lost replaces an event that is missing; its time is that of the event before
   */
  public Repaired repair(String caseId, NewEvent lost, Instant now) {
    return write(s -> s.audits().repair(caseId, lost, now));
  }

  /** The cases in one state, the one last written to first. */
  public List<CaseSummary> cases(CaseStatus state) {
    return read(s -> s.cases().in(state));
  }

  /** The cases of a gate, under any name that it has had, the one last written to first. */
  public List<CaseSummary> casesAt(String gate) {
    return read(s -> s.cases().at(s.renaming().now(gate)));
  }

  /** The cases that meet the criteria, the one last written to first. */
  public List<CaseSummary> search(CaseSearch search) {
    return read(
        s -> {
          var lines = s.cases().all().stream().filter(search::fits).toList();
          return search.text().map(text -> holding(s, lines, text)).orElse(lines);
        });
  }

  /**
   * The cases that contain a text. Searched here and not in SQL, because databases differ in which
   * letters they match when they ignore case.
   */
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

  /** The line of one case in the list. */
  public CaseSummary summary(CaseId id) {
    return read(s -> s.cases().summary(id));
  }

  /**
   * The case that somebody means by a complete id, its number ("7" for 2026-0007), or the beginning
   * of its id.
   *
   * @throws CaseNotFound if that is no case, with the nearest ones, or several, with all of them
   */
  public CaseId find(String typed) {
    var whole = CaseId.parse(typed.strip());
    return read(
        s ->
            whole.isPresent() && s.cases().exists(whole.get())
                ? whole.get()
                : CaseFinder.find(typed, s.cases().ids()));
  }

  /** Stores the description of a site as its newest revision; the older ones stay. */
  public void saveSite(SiteRecord site) {
    write(s -> s.sites().save(site));
  }

  /**
   * Gives a gate another name. Its cases and everything known of it move to the new name; the
   * events of its cases are not changed and keep the old one.
   *
   * @throws CasebookException if there is no such gate, or another one has the name
   */
  public void rename(String from, String to, Instant at) {
    Storable.text("site", to);
    write(s -> s.renaming().rename(from, to, at));
  }

  /**
   * Merges two entries for the same gate. The cases of the first and everything known of it move to
   * the second, and the first name leads there. The events of its cases are not changed.
   *
   * @throws CasebookException if there is no such gate
   */
  public void merge(String from, String into, Instant at) {
    write(s -> s.renaming().merge(from, into, at));
  }

  /** The present name of the gate that has, or had, this name. */
  public String nameNow(String name) {
    return read(s -> s.renaming().now(name));
  }

  /** The present names of gates that had this name before and no longer have it. */
  public List<String> formerly(String name) {
    return read(s -> s.sites().formerly(name));
  }

  /** The newest revision of a site, if it was ever saved. */
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

  /** A case to be carried to another casebook; with what is known of people only if asked for. */
  public CarriedCase carry(CaseId id, boolean withPeople) {
    return write(s -> s.carrying().carry(id, withPeople));
  }

  /** A site with all its revisions, if it was ever saved. */
  public Optional<CarriedSite> carry(String siteId) {
    return site(siteId).map(site -> read(s -> s.carrying().carry(site.id())));
  }

  /** Imports a case, or what is new in it. Importing it again changes nothing. */
  public ImportedCase take(CarriedCase carried) {
    return write(s -> s.carrying().take(carried));
  }

  /**
   * Imports the other branch of a case that went on differently here and elsewhere, as a separate
   * case.
   */
  public ImportedCase takeApart(CarriedCase carried) {
    return take(carried.apart());
  }

  /**
   * Imports what is new of a site.
   *
   * @return false if it was described differently here and elsewhere; then nothing was changed
   */
  public boolean take(CarriedSite site) {
    return write(s -> s.carrying().take(site));
  }

  /**
   * Stores what is known of a person in a case, and replaces what was stored of them there before.
   */
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

  /** The cases that know somebody with this name or telephone number. */
  public List<CaseId> knowing(String nameOrPhone) {
    return read(s -> s.people().knowing(nameOrPhone));
  }

  /**
   * Deletes the people of a case; its events stay. If the case was repaired, its state before that
   * is deleted too.
   *
   * @return how many people were deleted
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
   * Deletes somebody's own words; the events stay with their numbers and times. Importing a file
   * that still has the words does not bring them back.
   *
   * @param left what replaces each of them, by number of the event
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
   * Runs work on the connection, one piece at a time: there is only one connection, and people type
   * slowly. If the server was restarted since and the connection is lost, a new one is made. All
   * work may be started again, because no work takes effect twice.
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
