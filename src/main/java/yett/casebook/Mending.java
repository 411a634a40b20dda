package yett.casebook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A repaired case: every number from 1 on has an event that can be read. A changed event stays as
 * it was found, because nobody knows what it was before.
 *
 * @param line its times and its state, as far as they can be read
 * @param done what was done, parts of a sentence
 */
record Mending(CaseRow line, List<StoredEvent> events, List<String> done) {
  /**
   * If more events in a row than this seem to be missing, the numbers themselves are not trusted.
   */
  private static final int MOST_LOST = 1_000;

  static Mending of(CaseRow row, List<EventRow> found, NewEvent lost, Instant now) {
    return new Work(row, lost, now).mend(found);
  }

  /** Restores a case of which only the note is left that it was begun. */
  static Mending ofGone(BegunTables.Begun begun, NewEvent lost, Instant now) {
    CaseRow line = CaseRow.of(begun);
    Mending noted = of(line, List.of(), lost, now);
    return new Mending(
        noted.line(),
        noted.events(),
        List.of("it is gone with all its entries; a note stands in their place"));
  }

  private static final class Work {
    private final CaseRow row;
    private final NewEvent lost;
    private final List<StoredEvent> events = new ArrayList<>();
    private final List<String> done = new ArrayList<>();
    private Instant at;

    Work(CaseRow row, NewEvent lost, Instant now) {
      this.row = row;
      this.lost = lost;
      this.at = Storable.isTime(row.openedAt()) ? Instant.parse(row.openedAt()) : now;
    }

    Mending mend(List<EventRow> found) {
      found.stream()
          .filter(EventRow::isReadable)
          .findFirst()
          .filter(e -> !Storable.isTime(row.openedAt()))
          .ifPresent(e -> at = Instant.parse(e.at()));
      Instant opened = at;
      found.forEach(this::take);
      if (row.lastSeq() - events.size() <= MOST_LOST) {
        fill(row.lastSeq());
      }
      if (!row.trouble().isEmpty()) {
        done.add("its line in the list was written anew");
      }
      if (done.isEmpty()) {
        done.add("it was sealed anew as it stands");
      }
      boolean known =
          Arrays.stream(CaseStatus.values()).anyMatch(s -> s.name().equals(row.state()));
      return new Mending(
          new CaseRow(
              row.id(),
              row.uid(),
              row.siteId(),
              Storable.written(opened),
              Storable.written(at),
              events.size(),
              known ? row.state() : CaseStatus.OPEN.name(),
              row.title(),
              row.cause(),
              "",
              0,
              ""),
          List.copyOf(events),
          List.copyOf(done));
    }

    private void take(EventRow event) {
      if (event.seq() < 1 || event.seq() - events.size() > MOST_LOST) {
        done.add("event " + event.seq() + " was taken out: no event can have that number");
        return;
      }
      fill(event.seq() - 1);
      if (event.isReadable()) {
        at = Instant.parse(event.at());
      } else {
        done.add("event " + event.seq() + " has the time of the one before it");
      }
      events.add(new StoredEvent(event.seq(), at, event.by(), event.type(), event.body()));
    }

    private void fill(long last) {
      while (events.size() < last) {
        long seq = events.size() + 1L;
        done.add("event " + seq + " is gone; a note stands in its place");
        events.add(new StoredEvent(seq, at, lost.by(), lost.type(), lost.body()));
      }
    }
  }
}
