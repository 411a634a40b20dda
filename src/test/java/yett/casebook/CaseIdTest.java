package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseIdTest {
  @ParameterizedTest
  @ValueSource(strings = {"2026-0007", "1000-0001", "9999-0001", "2026-12345"})
  void what_was_written_is_read_again(String text) {
    assertThat(CaseId.parse(text)).get().hasToString(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0999-0001", "2026-0000", "2026-007", "26-0007", "2026-0007 ", "7", ""})
  void anything_else_is_no_case(String text) {
    assertThat(CaseId.parse(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"999, 1", "10000, 1", "2026, 0", "2026, -1"})
  void no_case_can_be_called_so(int year, int number) {
    assertThatThrownBy(() -> new CaseId(year, number))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("is not a case");
  }

  @Test
  void the_first_and_the_last_year_have_cases() {
    assertThat(new CaseId(1000, 1)).hasToString("1000-0001");
    assertThat(new CaseId(9999, 1)).hasToString("9999-0001");
  }

  @Test
  void cases_stand_in_the_order_in_which_they_were_opened() {
    var first = new CaseId(2025, 30);
    var second = new CaseId(2026, 7);
    var third = new CaseId(2026, 20);
    assertThat(List.of(third, first, second).stream().sorted())
        .containsExactly(first, second, third);
  }
}
