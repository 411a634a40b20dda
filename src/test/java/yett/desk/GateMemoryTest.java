package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.Outbox;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.knowledge.SiteQuestion;
import yett.testing.Shipped;

/** What is known of a gate from one visit to the next. */
class GateMemoryTest {
  private static final String GATE = "Salt quay";
  private static final String AGE = SiteQuestion.BATTERY_AGE;

  @TempDir private Path directory;

  @Test
  void batteries_grow_older_between_visits_however_often_somebody_comes() {
    try (Casebook casebook = Casebook.open(directory.resolve("casebook.db"))) {
      keep(casebook, "2025-03-03", Map.of(AGE, "0 years", "opening", "6 m"));
      keep(casebook, "2025-09-03", Map.of(AGE, "0 years", "opening", "6.1 m"));
      assertThat(known(casebook, "2026-03-02").get(AGE)).isEqualTo("0 years");
      assertThat(known(casebook, "2026-03-04").get(AGE)).isEqualTo("1 years");
      keep(casebook, "2026-12-01", Map.of(AGE, "1 years", "opening", "6.2 m"));
      assertThat(known(casebook, "2027-03-04").get(AGE)).isEqualTo("2 years");
    }
  }

  @Test
  void new_ones_are_as_old_as_somebody_says() {
    try (Casebook casebook = Casebook.open(directory.resolve("casebook.db"))) {
      keep(casebook, "2025-03-03", Map.of(AGE, "4"));
      keep(casebook, "2026-06-01", Map.of(AGE, "0 years"));
      assertThat(known(casebook, "2027-05-01")).containsExactly(Map.entry(AGE, "0 years"));
      assertThat(GateMemory.answers(casebook.site(GATE).orElseThrow()))
          .containsExactly(Map.entry(AGE, "0 years"));
    }
  }

  @Test
  void batteries_that_were_fitted_are_new_from_that_day_on() {
    try (Casebook casebook = Casebook.open(directory.resolve("casebook.db"))) {
      keep(casebook, "2025-03-03", Map.of(AGE, "0 years"));
      Optional<LocalDate> fitted = Optional.of(LocalDate.parse("2025-12-01"));
      assertThat(memory(casebook, "2025-12-01").keep(GATE, Map.of(AGE, "4 years"), fitted))
          .isTrue();
      assertThat(memory(casebook, "2025-12-03").keep(GATE, Map.of(AGE, "4 years"), fitted))
          .isTrue();
      assertThat(known(casebook, "2026-11-30").get(AGE)).isEqualTo("0 years");
      assertThat(known(casebook, "2026-12-02").get(AGE)).isEqualTo("1 years");
    }
  }

  @Test
  void who_replaces_the_batteries_in_a_case_need_not_tell_their_age_and_may() {
    try (Casebook casebook = Casebook.open(directory.resolve("casebook.db"))) {
      CaseId id = casebook.newCase(GATE, Instant.parse("2026-03-02T08:00:00Z"));
      Clock clock = Clock.fixed(Instant.parse("2026-03-02T09:00:00Z"), ZoneOffset.UTC);
      try (OpenCase open =
          new OpenCase(
              casebook,
              id,
              Shipped.QUICK.newInterview(),
              Optional.of(Role.TECHNICIAN),
              clock,
              new Outbox(directory.resolve("outbox"), casebook.name()).newParcel(id))) {
        open.record(
            new Event.Opened(GATE, Role.TECHNICIAN, "f"),
            new Event.SiteAnswered(AGE, "6 years"),
            new Event.SiteTaken());
        assertThat(known(casebook, "2026-03-02").get(AGE)).isEqualTo("6 years");
        open.record(new Event.Repaired("replace-batteries", true));
        assertThat(known(casebook, "2026-03-02").get(AGE)).isEqualTo("0 years");
        assertThat(known(casebook, "2028-03-03").get(AGE)).isEqualTo("2 years");
        open.record(new Event.SiteAnswered(AGE, "1 years"));
        assertThat(known(casebook, "2026-03-02").get(AGE)).isEqualTo("1 years");
      }
    }
  }

  private static void keep(Casebook casebook, String day, Map<String, String> answers) {
    assertThat(memory(casebook, day).keep(GATE, answers)).isTrue();
  }

  private static Map<String, String> known(Casebook casebook, String day) {
    return memory(casebook, day).known(GATE, Shipped.BASE);
  }

  private static GateMemory memory(Casebook casebook, String day) {
    return new GateMemory(casebook, Clock.fixed(Instant.parse(day + "T09:00:00Z"), ZoneOffset.UTC));
  }
}
