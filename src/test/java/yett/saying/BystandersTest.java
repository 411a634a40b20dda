package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Shipped;

/** A danger is told by what happens, not by who or what is there. */
class BystandersTest {
  private static Heard heard(String words) {
    return new Tellings(Shipped.HEARING).hear(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "husband here now",
        "my husband is here now",
        "my daughter is at the gate now",
        "the neighbour is here",
        "hedge",
        "the hedge has grown into it",
        "there's a bicycle beside the gate",
        "there is a bike leaning on the fence",
        "the bicycle is locked to the post",
        "the dog is here, a bin stands next to it"
      })
  void who_and_what_is_there_is_no_danger(String words) {
    assertThat(heard(words).dangers()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "it hit my bicycle, danger-movement",
    "it knocked my bicycle over, danger-movement",
    "the hedge is on fire, danger-fire",
    "there's a fire beside the gate, danger-fire",
    "there is a bare wire beside the gate, danger-conductors",
    "my son is under the gate, danger-person",
    "my daughter is in the gate, danger-person",
    "my husband is lying by the gate, danger-person",
    "the dog is under it, danger-person",
    "my husband is here now and his hand is stuck in it, danger-person",
    "the gate is leaning on the fence, danger-leaf"
  })
  void what_happens_to_them_is_one(String words, String check) {
    assertThat(heard(words).dangerThings()).extracting(Thing::card).contains(check);
  }
}
