package yett.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yett.knowledge.Pressing;
import yett.knowledge.Pressing.Urgency;

class UrgenciesTest {
  private static final Instant TUESDAY = Instant.parse("2026-11-24T19:30:00Z");
  private static final Instant SATURDAY = Instant.parse("2026-11-28T09:00:00Z");
  private static final Instant FRIDAY_EVENING = Instant.parse("2026-11-27T18:00:00Z");

  private static final Pressing OPEN =
      pressing("the site stands open", Urgency.TODAY, Urgency.AT_ONCE);
  private static final Pressing SHUT_IN =
      pressing("somebody is shut in", Urgency.AT_ONCE, Urgency.AT_ONCE);

  @Test
  void without_anything_pressing_the_next_working_day_will_do() {
    DispatchSheet.Urgency urgency = of(List.of(), TUESDAY);
    assertThat(urgency.level()).isEqualTo("next working day");
    assertThat(urgency.reasons()).containsExactly("nothing at the site makes it urgent");
  }

  @Test
  void the_most_urgent_reason_decides_and_every_reason_is_told() {
    DispatchSheet.Urgency urgency = of(List.of(OPEN, SHUT_IN), TUESDAY);
    assertThat(urgency.level()).isEqualTo("at once");
    assertThat(urgency.reasons()).containsExactly("the site stands open", "somebody is shut in");
    assertThat(of(List.of(OPEN), TUESDAY).level()).isEqualTo("today");
  }

  @Test
  void at_a_weekend_an_open_site_cannot_wait() {
    assertThat(of(List.of(OPEN), SATURDAY))
        .isEqualTo(
            new DispatchSheet.Urgency(
                "at once", List.of("the site stands open, and it is the weekend")));
    assertThat(of(List.of(OPEN), FRIDAY_EVENING).level()).isEqualTo("at once");
    assertThat(of(List.of(), SATURDAY).reasons())
        .containsExactly("it is the weekend: the next working day is Monday 2026-11-30");
  }

  @Test
  void the_weekend_is_that_of_the_site() {
    Instant late = Instant.parse("2026-11-29T20:00:00Z"); // Monday morning in Auckland
    assertThat(
            Urgencies.of(
                    List.of(),
                    List.of(OPEN),
                    Urgencies.Quiet.NOTHING_URGENT,
                    late,
                    ZoneId.of("Pacific/Auckland"))
                .level())
        .isEqualTo("today");
    assertThat(of(List.of(OPEN), late).level()).isEqualTo("at once");
  }

  @Test
  void a_danger_is_always_at_once() {
    assertThat(
            Urgencies.of(
                List.of(Urgencies.Danger.atOnce("Somebody is trapped")),
                List.of(),
                Urgencies.Quiet.NOTHING_URGENT,
                TUESDAY,
                ZoneOffset.UTC))
        .isEqualTo(new DispatchSheet.Urgency("at once", List.of("Somebody is trapped")));
  }

  /** A gate that was locked off and tagged hurts nobody as it stands. */
  @Test
  void a_danger_whose_card_says_so_waits_longer() {
    assertThat(
            Urgencies.of(
                List.of(new Urgencies.Danger("It was taken out of use", Urgency.TODAY)),
                List.of(pressing("somebody waits", Urgency.NEXT_WORKING_DAY, Urgency.TODAY)),
                Urgencies.Quiet.NOTHING_URGENT,
                TUESDAY,
                ZoneOffset.UTC))
        .isEqualTo(
            new DispatchSheet.Urgency(
                "today", List.of("It was taken out of use", "somebody waits")));
  }

  /**
   * What nobody asked or could say may be urgent: it does not sort behind what is known not to be.
   */
  @ParameterizedTest
  @EnumSource(names = {"UNASKED", "UNTOLD"})
  void an_urgency_that_is_not_known_does_not_wait(Urgencies.Quiet quiet) {
    assertThat(Urgencies.of(List.of(), List.of(), quiet, TUESDAY, ZoneOffset.UTC).level())
        .isEqualTo("today");
  }

  private static DispatchSheet.Urgency of(List<Pressing> pressing, Instant at) {
    return Urgencies.of(List.of(), pressing, Urgencies.Quiet.NOTHING_URGENT, at, ZoneOffset.UTC);
  }

  private static Pressing pressing(String said, Urgency urgency, Urgency weekend) {
    return new Pressing("p", "So?", said, urgency, weekend, List.of(), List.of(), "test");
  }
}
