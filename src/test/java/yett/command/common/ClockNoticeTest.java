package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class ClockNoticeTest {
  @Test
  void clocks_that_are_apart_are_told_in_the_time_of_the_person() {
    assertThat(
            ClockNotice.apart(
                Instant.parse("2026-07-01T22:30:59Z"),
                Instant.parse("2026-12-01T23:05:00Z"),
                ZoneId.of("Europe/Amsterdam")))
        .startsWith("The clock of this computer says 2026-07-02 00:30 CEST, ")
        .contains("has an entry dated 2026-12-02 00:05 CET.");
  }
}
