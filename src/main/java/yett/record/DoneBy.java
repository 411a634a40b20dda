package yett.record;

import java.util.List;
import yett.interview.event.Entry;
import yett.knowledge.Role;

/**
 * Says who did a step, where more than one role worked on a case: whether a technician or an
 * electrician read the mains matters to whoever relies on it.
 */
record DoneBy(boolean several) {
  static DoneBy of(List<Entry> entries) {
    return new DoneBy(Entry.valid(entries).stream().map(Entry::by).distinct().count() > 1);
  }

  /** To be put after the step; empty if one role did everything. */
  String words(Role role) {
    return several ? " (" + role.word() + ")" : "";
  }
}
