package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What is found by the words that somebody types. */
class CandidateTest {
  private static final List<Candidate> ALL =
      new Vocabulary(Shipped.BASE)
          .all().values().stream().flatMap(List::stream).distinct().toList();

  private static List<String> ids(String typed) {
    return Candidate.with(typed, ALL).stream().map(Candidate::id).toList();
  }

  @Test
  void small_words_alone_find_nothing_beside_others() {
    assertThat(Candidate.with("creeps at zzz", List.of(new Candidate("plug", "Plug at the board"))))
        .isEmpty();
  }

  @Test
  void those_with_more_and_rarer_words_come_first() {
    List<Candidate> some =
        List.of(
            new Candidate("battery-low", "Battery low"),
            new Candidate("battery-old", "Battery old"),
            new Candidate("cut-cable", "Cable cut"),
            new Candidate("battery-cable", "Battery cable loose"));
    assertThat(Candidate.with("battery cable rotten", some))
        .extracting(Candidate::id)
        .startsWith("battery-cable", "cut-cable");
  }

  @Test
  void nobody_has_to_look_through_ninety() {
    assertThat(ids("battery cut off")).hasSizeBetween(1, 15);
    assertThat(ids("battery")).hasSizeGreaterThan(15);
  }
}
