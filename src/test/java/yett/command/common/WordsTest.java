package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.testing.Shipped;

class WordsTest {
  @ParameterizedTest
  @CsvSource({"charging-fuse, 3 ohm", "charging-voltage, 40 V"})
  void the_reading_that_is_shown_how_to_type_is_one_that_could_be_read(String check, String shown) {
    assertThat(HeardAnswer.to(Shipped.BASE.checks().get(check), "").complaint())
        .startsWith("Type a reading such as " + shown + ",");
  }
}
