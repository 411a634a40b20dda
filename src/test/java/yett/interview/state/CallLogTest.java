package yett.interview.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.event.Tending;
import yett.knowledge.Role;

class CallLogTest {
  private static final Instant AT = Instant.parse("2026-11-24T19:30:00Z");

  private static CallLog log(Event... events) {
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, AT, Role.CALLER, event));
    }
    return CallLog.of(entries);
  }

  @Test
  void the_last_word_counts_and_forgotten_words_say_nothing() {
    CallLog log =
        log(
            new Event.Tended(Tending.WHERE, "4 Quay Road"),
            new Event.Tended(Tending.TAKEN, "Mia"),
            new Event.Tended(Tending.GIVEN, "Jon"),
            new Event.Tended(Tending.SENT, "Tom"),
            new Event.Tended(Tending.ON_THE_WAY, ""));
    assertThat(log.where()).contains("4 Quay Road");
    assertThat(log.holder()).contains("Jon");
    assertThat(log.stage().orElseThrow().what()).isEqualTo(Tending.ON_THE_WAY);
    assertThat(log(new Event.Tended(Tending.WHERE, "")).where()).isEmpty();
  }

  @Test
  void it_is_read_as_it_was_written() {
    Event event = new Event.Tended(Tending.SENT, "today, Tom", "2026-11-24T20:10:00Z");
    assertThat(EventText.read(EventText.write(event))).isEqualTo(event);
    Event without = new Event.Tended(Tending.TAKEN, "Mia");
    assertThat(EventText.write(without)).doesNotContain("due");
    assertThat(EventText.read(EventText.write(without))).isEqualTo(without);
  }
}
