package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.testing.Shipped;

class MeaningIndexTest {
  private static final MeaningIndex MEANING = new MeaningIndex(Shipped.BASE);

  @ParameterizedTest
  @CsvSource({
    "pack, batteries-low", // what people call them
    "batteries, batteries-worn", // stems
    "slipping brake, brake-slips",
    "lies on the leaf, chain-looks", // words of an outcome
    "frost, cold-snap" // histories
  })
  void cards_are_found_by_what_is_meant(String typed, String id) {
    assertThat(MEANING.of(typed)).contains(id);
  }

  @Test
  void what_nothing_is_called_finds_nothing() {
    assertThat(MEANING.of("flurble")).isEmpty();
  }
}
