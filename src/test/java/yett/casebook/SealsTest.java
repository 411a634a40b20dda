package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SealsTest {
  private static EventRow row(long seq, String at, String by, String body) {
    return new EventRow("2026-0007", seq, at, by, "noted", body, "");
  }

  /**
   * From another implementation of SHA-256, hashlib of Python 3, fed with the length of each part
   * in bytes, a colon and the part.
   */
  @Test
  void a_seal_is_the_hash_of_what_stands_there_and_of_the_seal_before() {
    EventRow first =
        row(1, "2026-11-25T09:30:00.000000000Z", "Zoë", "{\"text\":\"Möwe\"}").sealed(Seals.NONE);
    EventRow second = row(2, "2026-11-25T09:31:00.000000000Z", "caller", "").sealed(first.seal());

    assertThat(first.seal())
        .isEqualTo("18d825abe74693d241c9f36212ec03b253c2bbcf69aa274f40074ad686e45b62");
    assertThat(second.seal())
        .isEqualTo("6924fd40ede9712c47d372be39706f01c2742c262484b3c5b76913a07d247e23");
  }

  @Test
  void where_one_column_ends_and_the_next_begins_matters() {
    EventRow one = row(1, "2026-11-25T09:30:00.000000000Z", "call", "erx");
    EventRow other = row(1, "2026-11-25T09:30:00.000000000Z", "caller", "x");

    assertThat(one.sealed("").seal()).isNotEqualTo(other.sealed("").seal());
  }
}
