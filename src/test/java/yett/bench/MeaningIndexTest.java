package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.TreeMap;
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

  @ParameterizedTest
  @CsvSource({
    "An obstacle in the parking pocket, pocket-blocked",
    "The holding brake slips, brake-slips",
    "A pedestrian opening on the wrong button, partial-opening-commanded",
    "The gearbox has lost its oil, gearbox-stiff"
  })
  void a_new_cause_that_is_there_under_another_name_is_told(String name, String id) {
    assertThat(MeaningIndex.near(name, Shipped.BASE))
        .anyMatch(line -> line.startsWith("Close to " + id + " ("));
  }

  @Test
  void a_new_cause_that_is_like_none_is_no_matter() {
    assertThat(MeaningIndex.near("Chain bracket cracked at its foot", Shipped.BASE)).isEmpty();
  }

  @Test
  void a_new_repair_that_is_there_already_is_told() {
    assertThat(MeaningIndex.like("Wake and charge the lithium pack", Shipped.BASE))
        .contains(
            "Close to charge-lithium-pack (Charge the lithium pack). If it is that, name its id"
                + " instead.");
    assertThat(MeaningIndex.like("Paint the fence green", Shipped.BASE)).isEmpty();
  }

  @Test
  void where_there_is_no_cause_yet_none_is_close() {
    assertThat(
            MeaningIndex.near("Holding brake slips", new Checker().check(new TreeMap<>()).base()))
        .isEmpty();
  }

  @Test
  void what_nothing_is_called_finds_nothing() {
    assertThat(MEANING.of("flurble")).isEmpty();
  }
}
