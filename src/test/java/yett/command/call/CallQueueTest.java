package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.desk.OpenCase;
import yett.dispatch.DispatchSheet;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.event.Tending;
import yett.knowledge.Role;
import yett.testing.PostgresServer;
import yett.testing.Shipped;

/** The queue of a desk, on both kinds of casebook. */
class CallQueueTest {
  private static final Instant MONDAY = Instant.parse("2026-11-23T08:00:00Z");
  private static final Instant LATER = MONDAY.plusSeconds(3600);

  @TempDir private Path folder;

  @Test
  void on_a_file() {
    try (Casebook casebook = Casebook.open(folder.resolve("casebook.db"))) {
      isInOrder(casebook);
    }
  }

  @Test
  void on_a_server() {
    try (Casebook casebook = Casebook.open(PostgresServer.shared().newCasebook())) {
      isInOrder(casebook);
    }
  }

  private static void isInOrder(Casebook casebook) {
    Event pressed = new Event.Pressed(List.of("goods-held-up"));
    Event hurt = new Event.Answered("danger-person", new Answer.Chosen("hurt-or-trapped"));
    Event calm = new Event.Pressed(List.of());
    CaseId quiet = call(casebook, "North Gate", MONDAY, Role.CALLER, calm);
    CaseId unasked = call(casebook, "Slipway", MONDAY.plusSeconds(70), Role.CALLER);
    CaseId over =
        call(
            casebook,
            "Ropewalk",
            MONDAY.plusSeconds(180),
            Role.CALLER,
            new Event.Answered("danger-fire", new Answer.Chosen("fire")),
            new Event.Answered("danger-fire", new Answer.Chosen("none")),
            calm);
    CaseId held =
        call(
            casebook,
            "South Gate",
            MONDAY.plusSeconds(60),
            Role.CALLER,
            pressed,
            new Event.Tended(Tending.SENT, "Ben"),
            new Event.Tended(Tending.AT_THE_GATE, ""));
    CaseId emergency = call(casebook, "East Gate", MONDAY.plusSeconds(120), Role.CALLER, hurt);
    CaseId older =
        call(
            casebook,
            "West Gate",
            MONDAY.plusSeconds(30),
            Role.CALLER,
            pressed,
            new Event.Tended(Tending.TAKEN, "Mia Reed"),
            new Event.Tended(Tending.SENT, "Tom", MONDAY.plusSeconds(600).toString()),
            new Event.Tended(Tending.CALL_BACK, "at five", LATER.plusSeconds(600).toString()));
    call(casebook, "Fish dock", MONDAY, Role.TECHNICIAN);

    List<CallQueue.Call> calls =
        CallQueue.of(casebook, Shipped.BASE, ZoneOffset.UTC, CallQueueTest::exactly);
    assertThat(calls)
        .extracting(c -> c.line().id())
        .containsExactly(emergency, over, older, held, unasked, quiet);
    assertThat(calls.get(0).words(LATER))
        .startsWith("at once · East Gate · 58 min old · somebody is hurt")
        .endsWith("nobody has taken it");
    assertThat(calls.get(2).words(LATER))
        .contains("sent: Tom", "call back: at five", "LATE", "with Mia Reed");
    assertThat(calls.get(3).words(LATER)).contains("sent: Ben · at the gate");
    assertThat(calls.get(2).words(MONDAY.plusSeconds(60))).doesNotContain("LATE");
  }

  /** Stands for the rules, which decide whether a caller's "it is over" ends a danger. */
  private static DispatchSheet.Urgency exactly(CaseId id) {
    return new DispatchSheet.Urgency("at once", List.of("Fire on the site"));
  }

  private static CaseId call(
      Casebook casebook, String gate, Instant at, Role role, Event... events) {
    CaseId id = casebook.newCase(gate, at);
    append(casebook, id, 0, at, new Event.Opened(gate, role, "f"));
    for (int i = 0; i < events.length; i++) {
      append(casebook, id, i + 1, at, events[i]);
    }
    return id;
  }

  private static void append(Casebook casebook, CaseId id, int known, Instant at, Event event) {
    String body = EventText.write(event);
    casebook.append(id, known, new NewEvent(at, Role.CALLER.word(), OpenCase.type(event), body));
  }
}
