package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a database would cut or change never gets as far as a database, in whichever field. */
class StorableTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

  static Stream<Consumer<String>> texts() {
    return Stream.of(
        text -> new NewEvent(NOON, text, "type", "{}"),
        text -> new NewEvent(NOON, "by", text, "{}"),
        text -> new NewEvent(NOON, "by", "type", text),
        text -> new SiteRecord(text, "name", "{}", NOON),
        text -> new SiteRecord("id", text, "{}", NOON),
        text -> new SiteRecord("id", "name", text, NOON),
        text -> new Summary(CaseStatus.values()[0], text, "cause"),
        text -> new Summary(CaseStatus.values()[0], "title", text));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void a_nul_or_half_a_surrogate_pair_is_refused(Consumer<String> field) {
    assertThatCode(() -> field.accept("Boat lift gate \uD83D\uDEA7")).doesNotThrowAnyException();
    assertThatIllegalArgumentException().isThrownBy(() -> field.accept("quay\0side"));
    assertThatIllegalArgumentException().isThrownBy(() -> field.accept("\0"));
    assertThatIllegalArgumentException().isThrownBy(() -> field.accept("\uD83D"));
  }

  /** The years that sort as texts. */
  @ParameterizedTest
  @ValueSource(strings = {"0999-12-31T23:59:59.999999999Z", "+10000-01-01T00:00:00Z"})
  void a_time_beyond_four_digits_of_a_year_is_refused(String time) {
    Instant at = Instant.parse(time);
    assertThatIllegalArgumentException().isThrownBy(() -> new NewEvent(at, "by", "type", "{}"));
    assertThatIllegalArgumentException().isThrownBy(() -> new SiteRecord("id", "name", "{}", at));
  }

  @Test
  void the_first_and_the_last_moment_are_stored() {
    for (String time : new String[] {"1000-01-01T00:00:00Z", "9999-12-31T23:59:59.999999999Z"}) {
      assertThatCode(() -> new NewEvent(Instant.parse(time), "by", "type", "{}"))
          .doesNotThrowAnyException();
    }
  }

  @Test
  void only_a_time_as_it_is_written_here_is_one() {
    assertThat(Storable.isTime("2026-03-02T12:00:00.000000000Z")).isTrue();
    assertThat(Storable.isTime("2026-03-02T12:00:00Z")).isFalse();
    assertThat(Storable.isTime("yesterday")).isFalse();
  }

  @Test
  void what_somebody_wrote_is_quoted_short_and_without_controls() {
    assertThat(Shown.quoted("quay\u001b[2Jside")).isEqualTo("\"quay?[2Jside\"");
    assertThat(Shown.quoted("x".repeat(40))).isEqualTo("\"" + "x".repeat(40) + "\"");
    assertThat(Shown.quoted("x".repeat(41))).isEqualTo("\"" + "x".repeat(40) + "…\"");
    assertThat(Shown.quoted("\uD83D\uDEA7".repeat(41)))
        .isEqualTo("\"" + "\uD83D\uDEA7".repeat(40) + "…\"");
  }
}
