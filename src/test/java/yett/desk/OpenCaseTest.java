package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.Outbox;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.replay.SmallRuleBase;
import yett.testing.PostgresServer;

/** Two people on one case, and a server that goes away and comes back. */
class OpenCaseTest {
  private static final PostgresServer SERVER = PostgresServer.own();
  private static final Event NOBODY = answered("danger-person", "nobody");
  private static final Event LIT = answered("display-lit", "steady");
  private static final Event DARK = answered("display-lit", "dark");
  private static final Event SLAP = answered("noise-kind", "slap");

  @TempDir Path directory;
  private final String url = SERVER.newCasebook();
  private final List<AutoCloseable> opened = new ArrayList<>();
  private CaseId id;

  @AfterAll
  static void end() {
    SERVER.close();
  }

  @BeforeEach
  void begin() {
    try (Casebook casebook = Casebook.open(url)) {
      id = casebook.newCase("fish-dock", Instant.parse("2026-11-25T09:30:00Z"));
    }
    try (var first = open("first", Role.CALLER)) {
      first.record(new Event.Opened("Fish dock", Role.CALLER, "f"));
    }
  }

  @AfterEach
  void closeAll() throws Exception {
    for (AutoCloseable each : opened) {
      each.close();
    }
  }

  private static Event answered(String check, String outcome) {
    return new Event.Answered(check, new Answer.Chosen(outcome));
  }

  private Outbox outbox(String desk, Casebook casebook) {
    return new Outbox(directory.resolve(desk), casebook.name());
  }

  /** As at a desk of that name: with a connection and an outbox of its own. */
  private OpenCase open(String desk, Role role) {
    Casebook casebook = Casebook.open(url);
    opened.add(casebook);
    return new OpenCase(
        casebook,
        id,
        SmallRuleBase.expertise().newInterview(),
        Optional.of(role),
        Clock.tickMillis(ZoneOffset.UTC),
        outbox(desk, casebook).newParcel(id));
  }

  private List<Event> stored() {
    try (Casebook casebook = Casebook.open(url)) {
      return OpenCase.entries(casebook.events(id)).stream().skip(1).map(Entry::event).toList();
    }
  }

  @Test
  void the_second_of_two_sees_what_came_in_and_loses_nothing() {
    try (var ada = open("a", Role.TECHNICIAN);
        var ben = open("b", Role.CALLER)) {
      ada.record(NOBODY, LIT);

      EntryOutcome recorded = ben.record(SLAP);

      assertThat(recorded.theirs()).extracting(e -> e.event()).containsExactly(NOBODY, LIT);
      assertThat(stored()).containsExactly(NOBODY, LIT, SLAP);
      assertThat(ben.moment().entries()).hasSize(4);
      EntryOutcome next = ada.record(new Event.Noted("gull on the beam"));
      assertThat(next.theirs()).extracting(e -> e.event()).containsExactly(SLAP);
      assertThat(stored()).hasSize(4);
    }
  }

  @Test
  void two_answers_to_one_question_are_shown_and_both_kept() {
    try (var ada = open("a", Role.TECHNICIAN);
        var ben = open("b", Role.CALLER)) {
      ada.record(LIT);

      EntryOutcome recorded = ben.record(DARK);

      assertThat(recorded.clashes()).hasSize(1);
      assertThat(ben.moment().state().latest("display-lit").orElseThrow().answer())
          .isEqualTo(new Answer.Chosen("steady"));
      assertThat(stored()).hasSize(2).last().isInstanceOf(Event.Noted.class);
      assertThat(recorded.delivered()).as("the server was never away").isZero();
    }
  }

  @Test
  void answers_wait_here_while_the_server_is_away_and_arrive_in_order_and_once() {
    try (var ben = open("b", Role.CALLER)) {
      ben.record(NOBODY);
      SERVER.crash();
      EntryOutcome first = ben.record(LIT);
      EntryOutcome second = ben.record(SLAP);
      assertThat(first.lost()).isPresent();
      assertThat(second.lost()).isEmpty(); // told once
      assertThat(second.waiting()).isEqualTo(2);
      assertThat(ben.moment().state().answers()).hasSize(3);
      SERVER.start();

      EntryOutcome third = ben.record(new Event.Noted("rain"));

      assertThat(third.delivered()).isEqualTo(2);
      assertThat(stored()).containsExactly(NOBODY, LIT, SLAP, new Event.Noted("rain"));
      assertThat(ben.waiting()).isZero();
    }
  }

  @Test
  void what_a_killed_program_left_waiting_is_delivered_by_the_next_one_once() {
    var killed = open("b", Role.CALLER);
    killed.record(NOBODY);
    SERVER.crash();
    killed.record(LIT);
    killed.record(DARK); // another word on the same: the later one counts
    SERVER.start();

    try (var next = open("b", Role.TECHNICIAN)) {
      var outbox = outbox("b", opened.isEmpty() ? null : (Casebook) opened.get(0));
      assertThat(outbox.parcels()).hasSize(1);
      next.deliver(outbox.parcels().get(0));
      assertThat(outbox.parcels()).isEmpty();
    }
    killed.deliver(); // it was not dead after all

    assertThat(stored()).containsExactly(NOBODY, LIT, DARK);
  }

  /** What is known of the gate is written after the answer; the next answer tries again. */
  @Test
  void an_answer_that_is_stored_is_not_lost_with_the_line_of_its_case() {
    String schema = url.substring(url.indexOf("currentSchema=") + "currentSchema=".length());
    try (var ben = open("b", Role.TECHNICIAN)) {
      SERVER.execute("postgres", "update " + schema + ".case_file set opened_at = 'noon'");

      ben.record(NOBODY, new Event.SiteTaken());

      assertThat(ben.moment().state().told().siteTaken()).isTrue();
      assertThat(stored()).containsExactly(NOBODY, new Event.SiteTaken());
    }
  }

  @Test
  void answers_that_waited_come_after_those_that_others_gave_meanwhile() {
    try (var ada = open("a", Role.TECHNICIAN);
        var ben = open("b", Role.CALLER)) {
      SERVER.crash();
      ben.record(NOBODY, DARK);
      ben.record(SLAP);
      SERVER.start();
      ada.record(NOBODY, LIT);

      EntryOutcome recorded = ben.deliver();

      assertThat(recorded.theirs()).hasSize(2);
      assertThat(recorded.clashes()).hasSize(1);
      assertThat(stored()).hasSize(4).startsWith(NOBODY, LIT).last().isEqualTo(SLAP);
      assertThat(ben.waiting()).isZero();
      assertThat(outbox("b", (Casebook) opened.get(0)).parcels()).isEmpty();
    }
  }
}
