package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a model of meanings hardly tells apart is told apart by how it is said. */
class MannerTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "it used to move by itself",
        "what if it ever catches fire",
        "it moved on its own last year",
        "could it hurt somebody",
        "it could hurt a child",
        "somebody is going to get hurt",
        "we nearly hit it",
        "it is meant to open by itself"
      })
  void what_is_not_now_is_told(String clause) {
    assertThat(NotNow.in(clause)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it fell over",
        "ever since the storm it leans",
        "it moves although it is not meant to",
        "it nearly hit me",
        "it could have killed him",
        "somebody could smell burning",
        "last night it moved by itself"
      })
  void what_is_now_is_not_taken_for_past_or_feared(String clause) {
    assertThat(NotNow.in(clause)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "it will not close, OPEN",
    "it stands wide open, OPEN",
    "it doesn't shut any more, OPEN",
    "the gate won't open, SHUT",
    "it stays shut, SHUT",
    "it refuses to open, SHUT",
    "it opens and closes, UNSAID",
    "it will not open and not close, UNSAID"
  })
  void the_end_at_which_it_stays_is_told(String clause, Standing standing) {
    assertThat(Standing.in(clause)).isEqualTo(standing);
  }

  @ParameterizedTest
  @CsvSource({
    "a van hit the gate, SOMETHING_ELSE",
    "I backed into it, SOMETHING_ELSE",
    "the post was hit by a lorry, SOMETHING_ELSE",
    "the gate hit a van, GATE",
    "it ran into my car, GATE",
    "my car was hit by the gate, GATE",
    "it does nothing, UNSAID"
  })
  void who_runs_into_whom_is_told(String clause, Striker striker) {
    assertThat(Striker.in(clause)).isEqualTo(striker);
  }

  @ParameterizedTest
  @CsvSource({
    "'well, it stopped this morning, I''m afraid', it stopped",
    "it does not open full stop, it does not open",
    "hello dead, hello dead"
  })
  void the_day_and_politeness_are_left_out(String said, String meant) {
    assertThat(Filler.without(said)).isEqualTo(meant);
  }
}
