package yett.casebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Searches the stored rows of a case for anything that this program cannot have written. */
final class Audit {
  private final CaseRow row;
  private final List<Finding> findings = new ArrayList<>();

  private Audit(CaseRow row) {
    this.row = row;
  }

  /**
   * @param begun the note made when the case was begun; empty if there is none
   */
  static List<Finding> of(CaseRow row, List<EventRow> events, Optional<BegunTables.Begun> begun) {
    var audit = new Audit(row);
    if (row.isLost() && events.isEmpty() && begun.isPresent()) {
      audit.find(
          0,
          Finding.Kind.DAMAGE,
          "is gone whole: it was begun on "
              + day(begun.get().openedAt())
              + " for the gate "
              + Shown.quoted(begun.get().siteId()));
      return List.copyOf(audit.findings);
    }
    if (begun.isEmpty()) {
      audit.find(0, Finding.Kind.CHANGE, "was put in by another program");
    }
    if (!row.trouble().isEmpty()) {
      audit.find(0, Finding.Kind.DAMAGE, "cannot be read: " + row.trouble());
    }
    audit.follow(events);
    if (row.sealedAfter() > 0) {
      audit.find(
          0,
          Finding.Kind.SEALED_LATER,
          "the events up to "
              + row.sealedAfter()
              + " were sealed at "
              + row.sealedAt()
              + ", not when they were written");
    }
    return List.copyOf(audit.findings);
  }

  private void follow(List<EventRow> events) {
    EventRow before = null;
    long last = 0;
    String seal = Seals.NONE;
    for (EventRow event : events) {
      gap(last, event.seq());
      one(event, before);
      if (event.seal().isEmpty()) {
        find(event.seq(), Finding.Kind.CHANGE, "was written by another program");
      } else if (event.seq() == last + 1 && !event.isSealedAfter(seal)) {
        find(event.seq(), Finding.Kind.CHANGE, "is not what was written, or not in its place");
      }
      before = event;
      last = event.seq();
      seal = event.seal();
    }
    gap(last, row.lastSeq() + 1);
    if (row.lastSeq() < last) {
      find(0, Finding.Kind.CHANGE, "has more events than were written: " + last);
    } else if (row.lastSeq() == last && !row.seal().equals(seal)) {
      find(last, Finding.Kind.CHANGE, "is not the one that was written last");
    }
  }

  private void gap(long last, long next) {
    if (next > last + 1) {
      String gone = next == last + 2 ? "is gone" : "and those up to " + (next - 1) + " are gone";
      find(last + 1, Finding.Kind.DAMAGE, gone);
    }
  }

  private void one(EventRow event, EventRow before) {
    if (event.seq() < 1) {
      find(event.seq(), Finding.Kind.DAMAGE, "has a number that no event can have");
    }
    if (!event.isReadable()) {
      find(
          event.seq(),
          Finding.Kind.DAMAGE,
          "cannot be read: it happened at " + Shown.quoted(event.at()));
    } else if (before != null && before.isReadable() && event.at().compareTo(before.at()) < 0) {
      find(
          event.seq(),
          Finding.Kind.CLOCK,
          "is dated "
              + event.at()
              + ", before the one that was written before it (usual if it waited on a computer or"
              + " came in a file)");
    }
  }

  private static String day(String at) {
    return Storable.isTime(at) ? at.substring(0, "2026-11-25".length()) : Shown.quoted(at);
  }

  private void find(long event, Finding.Kind kind, String words) {
    findings.add(new Finding(row.id(), event, kind, words));
  }
}
