package yett.interview.state;

import java.util.List;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.event.Tending;
import yett.knowledge.Role;

/**
 * Who made an entry, with the name that the case knows: whoever at the desk held the call then, or
 * whoever the desk had sent. Another person may have been at the keyboard, so the name is given as
 * what it is.
 */
public record Somebody(Role role, Optional<String> name) {

  /**
   * @param entries all of the case
   */
  public static Somebody who(Entry entry, List<Entry> entries) {
    CallLog before =
        CallLog.of(entries.stream().filter(e -> e.number() <= entry.number()).toList());
    return new Somebody(entry.by(), entry.by() == Role.CALLER ? before.holder() : sent(before));
  }

  /** The name before the time: "Tom, in 40 min". */
  private static Optional<String> sent(CallLog log) {
    return log.last(Tending.SENT)
        .map(t -> t.words().split("[,;]")[0].strip())
        .filter(name -> !name.isEmpty());
  }

  /** "desk (the call is with Maud Oyen)", "technician (sent: Tom)", or the role alone. */
  public String words() {
    return name.map(
            n ->
                role == Role.CALLER
                    ? "desk (the call is with " + n + ")"
                    : role.word() + " (sent: " + n + ")")
        .orElse(role.word());
  }
}
