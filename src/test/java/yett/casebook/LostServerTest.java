package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import yett.testing.PostgresServer;

class LostServerTest {
  private static final PostgresServer SERVER = PostgresServer.own();

  @AfterAll
  static void end() {
    SERVER.close();
  }

  @Test
  void a_server_started_anew_is_found_again_without_a_word() {
    try (var casebook = Casebook.open(SERVER.newCasebook())) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);
      casebook.append(id, 0, Writer.event("Ada", 1));

      SERVER.crash();
      SERVER.start();

      casebook.append(id, 1, Writer.event("Ada", 2));
      assertThat(casebook.events(id)).hasSize(2);
    }
  }

  @Test
  void a_server_that_is_away_is_told_and_used_again_when_it_is_back() {
    try (var casebook = Casebook.open(SERVER.newCasebook())) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);

      SERVER.crash();
      assertThatThrownBy(() -> casebook.append(id, 0, Writer.event("Ada", 1)))
          .isInstanceOf(CasebookUnreachable.class)
          .hasMessageContaining("the server does not answer");
      assertThatThrownBy(casebook::cases).isInstanceOf(CasebookUnreachable.class);
      SERVER.start();

      casebook.append(id, 0, Writer.event("Ada", 1));
      assertThat(casebook.events(id)).hasSize(1);
    }
  }

  /** Whether a commit was carried out, a connection that breaks just then leaves open. */
  @Test
  void an_append_that_is_tried_again_is_written_once() {
    try (var casebook = Casebook.open(SERVER.newCasebook())) {
      CaseId id = casebook.newCase("harrow-quay-3", Writer.AT);
      var first = casebook.append(id, 0, Writer.event("Ada", 1), Writer.event("Ada", 2));
      casebook.append(id, 2, Writer.event("Ben", 3));
      casebook.summarise(id, 3, new Summary(CaseStatus.CLOSED, "Chain slack"));

      var again = casebook.append(id, 0, Writer.event("Ada", 1), Writer.event("Ada", 2));
      casebook.summarise(id, 2, new Summary(CaseStatus.OPEN, "begun"));

      assertThat(again).isEqualTo(first);
      assertThat(casebook.events(id)).hasSize(3);
      assertThat(casebook.summary(id).summary().state()).isEqualTo(CaseStatus.CLOSED);
      assertThatThrownBy(() -> casebook.append(id, 0, Writer.event("Ada", 2)))
          .isInstanceOf(CaseMovedOn.class);
    }
  }
}
