package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.testing.Shipped;

class VanStockTest {
  private static final String STOCK =
      """
      parts:
        - {part: pair of 12 V standby batteries, size: 12 Ah, count: 2}
        - {part: pair of 12 V standby batteries, size: 7 Ah}
        - {part: transmitter battery, count: 10}
        - {part: transmitter battery}
      """;

  private static VanStock read(String text) {
    return VanStock.read("van.yaml", text);
  }

  @ParameterizedTest
  @CsvSource({
    "transmitter battery, '', on the van (11)",
    "pair of 12 V standby batteries, 12 Ah, on the van (2)",
    "pair of 12 V standby batteries, 7 Ah, on the van",
    "pair of 12 V standby batteries, 18 Ah, 'to fetch; on the van only in 12 Ah, 7 Ah'",
    "pair of 12 V standby batteries, '', 'on the van in 12 Ah, 7 Ah'",
    "radio receiver, '', to fetch"
  })
  void a_part_is_on_the_van_or_to_fetch(String part, String size, String words) {
    assertThat(read(STOCK).words(part, Optional.of(size).filter(s -> !s.isEmpty())))
        .isEqualTo(words);
  }

  @Test
  void parts_are_those_of_the_cards() {
    assertThat(read(STOCK).unknownTo(Shipped.BASE)).isEmpty();
    assertThat(read("parts: [{part: transmiter battery}]").unknownTo(Shipped.BASE))
        .containsExactly("transmiter battery");
  }

  @Test
  void an_empty_list_has_nothing() {
    assertThat(read("").items()).isEmpty();
    assertThat(read("parts:\n").items()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "parts: [{prt: transmitter battery}] | \"prt\" is not a field here",
        "parts: [{part: transmitter battery, count: lots}] | \"lots\" is not a number",
        "parts: [{part: transmitter battery, count: -1}] | outside 1 to 999",
        "parts: [transmitter battery] | expected fields with values here",
        "parts: [{count: 3}] | \"part\" is missing",
        "parts: [ | this is not YAML",
        "part: transmitter battery | \"part\" is not a field here"
      })
  void what_is_wrong_is_told_with_its_line(String text, String problem) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("van.yaml:1:")
        .hasMessageContaining(problem);
  }
}
