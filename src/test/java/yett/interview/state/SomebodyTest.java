package yett.interview.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.knowledge.Role;

/** What somebody else did is told with the name that the case knows. */
class SomebodyTest {
  private static final Event NOTE = new Event.Noted("the gull is back");

  private final List<Entry> entries = new ArrayList<>();

  private Entry entry(Role by, Event event) {
    Entry entry = new Entry(entries.size() + 1, Instant.EPOCH, by, event);
    entries.add(entry);
    return entry;
  }

  private String who(Entry entry) {
    return Somebody.who(entry, entries).words();
  }

  @Test
  void the_desk_is_who_held_the_call_at_that_time() {
    entry(Role.CALLER, new Event.Tended(Tending.TAKEN, "Maud Oyen"));
    Entry early = entry(Role.CALLER, NOTE);
    entry(Role.CALLER, new Event.Tended(Tending.GIVEN, "Priya Nash"));
    Entry late = entry(Role.CALLER, NOTE);
    assertThat(who(early)).isEqualTo("desk (the call is with Maud Oyen)");
    assertThat(who(late)).isEqualTo("desk (the call is with Priya Nash)");
  }

  @Test
  void whoever_was_sent_is_named_without_the_time() {
    entry(Role.CALLER, new Event.Tended(Tending.SENT, "Tom Reed, in 40 min"));
    assertThat(who(entry(Role.TECHNICIAN, NOTE))).isEqualTo("technician (sent: Tom Reed)");
  }

  @Test
  void who_is_not_known_has_no_name() {
    assertThat(who(entry(Role.TECHNICIAN, NOTE))).isEqualTo("technician");
    assertThat(who(entry(Role.CALLER, NOTE))).isEqualTo("caller");
  }
}
